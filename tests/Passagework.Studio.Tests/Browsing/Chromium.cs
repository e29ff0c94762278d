using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>One browser for all tests of a run.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private IPlaywright? _playwright;

    /// <summary>The browser.</summary>
    public IBrowser Browser { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = "/usr/bin/chromium",
                Args =
                [
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--autoplay-policy=no-user-gesture-required",
                ],
            }
        );
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright?.Dispose();
    }
}

/// <summary>
/// Tests in the browser share it and a studio, and run one after the other so that none starves the other's timing.
/// </summary>
[CollectionDefinition(Name)]
public sealed class BrowserTests : ICollectionFixture<Chromium>, ICollectionFixture<OneStudio>
{
    /// <summary>Name of the collection.</summary>
    public const string Name = "in the browser";
}
