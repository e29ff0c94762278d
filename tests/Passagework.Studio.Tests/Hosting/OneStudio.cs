namespace Passagework.Studio.Tests.Hosting;

/// <summary>One studio for all tests in the browser; they find what they made by its name and leave the rest alone.</summary>
public sealed class OneStudio : IAsyncLifetime
{
    /// <summary>The studio.</summary>
    internal StudioProcess Studio { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => Studio = await StudioProcess.Start();

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Studio.Dispose();
        return ValueTask.CompletedTask;
    }
}
