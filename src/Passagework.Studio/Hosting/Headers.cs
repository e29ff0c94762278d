namespace Passagework.Studio.Hosting;

/// <summary>What every answer tells the browser about itself.</summary>
internal static class Headers
{
    /// <summary>Nothing is loaded from elsewhere, nothing is framed, no address is passed on.</summary>
    public static void UseStudioHeaders(this WebApplication app) =>
        app.Use(
            (context, next) =>
            {
                var headers = context.Response.Headers;
                headers.ContentSecurityPolicy =
                    "default-src 'self'; script-src 'self' 'unsafe-inline'; style-src 'self' 'unsafe-inline'; "
                    + "img-src 'self' data:; connect-src 'self' ws: wss:; object-src 'none'; base-uri 'self'; "
                    + "frame-ancestors 'none'; form-action 'self'";
                headers.XContentTypeOptions = "nosniff";
                headers["Referrer-Policy"] = "no-referrer";
                headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(self)";
                return next(context);
            }
        );
}
