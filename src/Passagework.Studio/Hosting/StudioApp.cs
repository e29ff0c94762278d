using System.Net.Sockets;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Hosting.StaticWebAssets;
using Passagework.Foundation;
using Passagework.Studio.Components;
using Passagework.Studio.Data;
using Passagework.Studio.Features;
using Passagework.Studio.Features.Demo;
using Passagework.Studio.Features.Exporting;
using Passagework.Studio.Features.Sound;
using Passagework.Studio.Features.Today;

namespace Passagework.Studio.Hosting;

/// <summary>The web application: what it is made of, started and stopped.</summary>
internal static class StudioApp
{
    private const string UsualUrl = "http://127.0.0.1:5080";
    private const string AnyFreePort = "http://127.0.0.1:0";

    /// <summary>Runs until it is stopped.</summary>
    /// <returns>0, or 1 with one line on standard error.</returns>
    public static async Task<int> Run(StudioOptions options, CancellationToken stop)
    {
        if ((SystemLibraries.Missing() ?? await Database.Open(options, TimeProvider.System)) is { } fault)
        {
            await Console.Error.WriteLineAsync(fault.ToString());
            return 1;
        }

        if (await Start(options) is not { } app)
        {
            return 1;
        }

        await using (app)
        {
            var address = AddressOf(app);
            Console.WriteLine($"The studio is open at {address}");
            Console.WriteLine($"Its data are in {options.DataFolder}. Ctrl+C closes it.");
            if (options.OpensBrowser)
                BrowserOpener.Open(address);

            await app.WaitForShutdownAsync(stop);
        }

        return 0;
    }

    /// <summary>The application, not yet listening.</summary>
    public static WebApplication Build(StudioOptions options, string urls)
    {
        // The folder of the program, wherever it is called from: the pages' files lie beside it.
        var builder = WebApplication.CreateBuilder(
            new WebApplicationOptions
            {
                ApplicationName = typeof(StudioApp).Assembly.GetName().Name,
                ContentRootPath = AppContext.BaseDirectory,
            }
        );
        StaticWebAssetsLoader.UseStaticWebAssets(builder.Environment, builder.Configuration);
        builder.WebHost.UseUrls(urls.Split(';'));
        KeepQuiet(builder.Logging);
        builder.Services.AddSingleton(options);
        builder.Services.AddSingleton(TimeProvider.System);
        builder.Services.AddHostedService<RestingMemory>();
        builder.Services.AddStudioData(options);
        builder.Services.AddStudioFeatures();
        builder.Services.AddStudioPages(options, builder.Environment);
        builder.Services.AddLargeForms();

        var app = builder.Build();
        app.UseStudioHeaders();
        app.UseExceptionHandler("/fault", createScopeForErrors: true);
        app.UseStatusCodePagesWithReExecute("/nothing-here", createScopeForStatusCodePages: true);
        app.UseWordsForLargeRequests();
        app.UseAntiforgery();
        app.MapStaticAssets();
        app.MapFonts();
        app.MapExports();
        app.MapSound();
        app.MapBeginnings();
        app.MapGet("/alive", () => Results.Ok());
        // A licence or another page of plain text names no icon, so the browser asks here.
        app.MapGet("/favicon.ico", () => Results.LocalRedirect("/mark.svg"));
        app.MapRazorComponents<App>()
            .AddInteractiveServerRenderMode(mode => mode.DisableWebSocketCompression = Loopback.IsOnly(urls));
        return app;
    }

    private static void KeepQuiet(ILoggingBuilder log)
    {
        log.SetMinimumLevel(LogLevel.Warning);
        // That keys lie in the user's own folder unencrypted is meant, and no news to the user.
        log.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Critical);
        // A start that fails is said below in a line, and tried again at another port.
        log.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.Critical);
        // What the disk refuses is said on the page.
        log.AddFilter("Microsoft.EntityFrameworkCore", LogLevel.Critical);
    }

    private static async Task<WebApplication?> Start(StudioOptions options)
    {
        var wanted = options.Urls ?? UsualUrl;
        try
        {
            return await Started(options, wanted);
        }
        catch (IOException) when (options.Urls is null)
        {
            return await Started(options, AnyFreePort);
        }
        catch (Exception wrong)
            when (wrong
                    is IOException
                        or FormatException
                        or InvalidOperationException
                        or ArgumentException
                        or SocketException
            )
        {
            var fault = new Fault(
                $"the studio cannot listen on {wanted}: {wrong.Message.TrimEnd('.')}",
                "--urls",
                "a free address such as http://127.0.0.1:5080"
            );
            await Console.Error.WriteLineAsync(fault.ToString());
            return null;
        }
    }

    private static async Task<WebApplication> Started(StudioOptions options, string urls)
    {
        var app = Build(options, urls);
        try
        {
            // Without the demo all else can be used.
            if (await app.Services.GetRequiredService<InstallDemo>().AtFirstStart() is { } fault)
                await Console.Error.WriteLineAsync($"The demo is not in. {fault}");

            await app.StartAsync();
            return app;
        }
        catch
        {
            await app.DisposeAsync();
            throw;
        }
    }

    private static string AddressOf(WebApplication app) =>
        app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
}
