using Passagework.Engraving.Fonts;

namespace Passagework.Studio.Hosting;

/// <summary>The typefaces of the pages, at <c>/fonts/NAME.woff</c>.</summary>
internal static class FontFiles
{
    /// <summary>Serves the faces that are built into the engine, and their licences at <c>/fonts/licences/FAMILY</c>.</summary>
    public static void MapFonts(this WebApplication app)
    {
        app.MapGet(
            "/fonts/licences/{family}",
            (string family) => WebFonts.Licence(family) is { } text ? Results.Text(text) : Results.NotFound()
        );
        app.MapGet(
            "/fonts/{name}",
            (string name, HttpResponse response) =>
            {
                if (WebFonts.Open(name) is not { } file)
                {
                    return Results.NotFound();
                }

                response.Headers.CacheControl = "public, max-age=2592000";
                return Results.Stream(file, "font/woff");
            }
        );
    }
}
