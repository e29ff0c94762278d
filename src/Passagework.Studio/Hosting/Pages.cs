using Microsoft.AspNetCore.DataProtection;

namespace Passagework.Studio.Hosting;

/// <summary>What the pages need to be drawn.</summary>
internal static class Pages
{
    /// <summary>Components, their live form, and keys that stay valid over a restart.</summary>
    public static void AddStudioPages(
        this IServiceCollection services,
        StudioOptions options,
        IWebHostEnvironment environment
    )
    {
        services.AddRazorComponents().AddInteractiveServerComponents();
        services.AddHttpContextAccessor();
        services
            .AddDataProtection()
            .SetApplicationName(environment.ApplicationName)
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(options.DataFolder, "keys")));
    }
}
