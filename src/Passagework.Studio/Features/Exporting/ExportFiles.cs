using System.Globalization;
using Passagework.Foundation;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Exporting;

/// <summary>Exercises as files, at addresses of their own.</summary>
internal static class ExportFiles
{
    /// <summary>Registers what writes them.</summary>
    public static void AddExporting(this IServiceCollection services) =>
        services.AddSingleton<ExportExercise>();

    /// <summary>Maps <c>/exercises/KEY/file/FORM</c>; <c>?bpm=</c> sets the tempo, <c>?show=1</c> opens it in the browser.</summary>
    public static void MapExports(this WebApplication app) =>
        app.MapGet(
            "/exercises/{key}/file/{form}",
            async (
                string key,
                string form,
                string? bpm,
                string? show,
                ExportExercise export,
                CancellationToken stop
            ) =>
            {
                if (ExportForm.Of(form) is not { } chosen)
                {
                    return Results.NotFound();
                }

                var tempo = double.TryParse(
                    bpm,
                    NumberStyles.Float,
                    CultureInfo.InvariantCulture,
                    out var given
                )
                    ? Math.Clamp(given, 10, 1000)
                    : (double?)null;
                return (await export.Export(new ExerciseKey(key), chosen, tempo, stop)).TryGet(
                    out var file,
                    out var fault
                )
                    ? Written(file, show is null)
                    : Results.Text(fault.ToString(), statusCode: StatusCodes.Status422UnprocessableEntity);
            }
        );

    private static IResult Written(ExportedFile file, bool asDownload)
    {
        try
        {
            return Sent(file, asDownload);
        }
        catch (IOException wrong)
        {
            var fault = new Fault(
                $"the file cannot be written: {wrong.Message.TrimEnd('.')}",
                Path.GetTempPath(),
                "free some space, then try again"
            );
            return Results.Text(fault.ToString(), statusCode: StatusCodes.Status507InsufficientStorage);
        }
    }

    // Written to a file first: a fault half-way must not look like a whole answer, and a long sound not fill the memory.
    private static IResult Sent(ExportedFile file, bool asDownload)
    {
        var content = new FileStream(
            Path.GetTempFileName(),
            new FileStreamOptions
            {
                Mode = FileMode.Create,
                Access = FileAccess.ReadWrite,
                Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous,
            }
        );
        file.Write(content);
        content.Position = 0;
        return Results.File(content, file.ContentType, asDownload ? file.Name : null);
    }
}
