using Microsoft.AspNetCore.Http.Features;
using Microsoft.AspNetCore.Http.Metadata;
using Passagework.Studio.Features.Importing;

namespace Passagework.Studio.Hosting;

/// <summary>Requests that are larger than their page takes are answered in words.</summary>
internal static class LargeRequests
{
    /// <summary>Mark in the address of a page to which too much was sent.</summary>
    public const string Mark = "far-too-large";

    // A browser listens only when it has sent all; beyond this the connection is cut.
    private const long MostTakenIn = 4L << 30;

    /// <summary>Forms may be as large as the largest file, and are held in memory: a full disk is no hindrance.</summary>
    public static void AddLargeForms(this IServiceCollection services) =>
        services.Configure<FormOptions>(form =>
        {
            form.ValueLengthLimit = Upload.MostSent;
            form.MultipartBodyLengthLimit = Upload.MostSent;
            form.MemoryBufferThreshold = Upload.MostSent;
        });

    /// <summary>Sends the browser back to the page, which says what it takes.</summary>
    public static void UseWordsForLargeRequests(this WebApplication app) =>
        app.Use(
            async (context, next) =>
            {
                var most = context.GetEndpoint()?.Metadata.GetMetadata<IRequestSizeLimitMetadata>();
                if (
                    context.Request.ContentLength is not { } sent
                    || sent <= (most?.MaxRequestBodySize ?? long.MaxValue)
                )
                {
                    await next(context);
                    return;
                }

                if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
                    size.MaxRequestBodySize = MostTakenIn;

                if (sent <= MostTakenIn)
                    await context.Request.Body.CopyToAsync(Stream.Null, context.RequestAborted);

                context.Response.Redirect($"{context.Request.Path}?{Mark}=true");
            }
        );
}
