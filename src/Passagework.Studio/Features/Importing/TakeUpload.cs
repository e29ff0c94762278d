using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Studio.Features.Importing;

/// <summary>Takes a file or pasted text, and asks which line where there are several.</summary>
internal sealed class TakeUpload(WaitingUploads waiting)
{
    /// <summary>One step: a new file, or the choice of a line of one that waits.</summary>
    /// <param name="form">What the page sent.</param>
    /// <param name="topNotesOnly">Whether only the melody is read.</param>
    /// <param name="stop">Gives up.</param>
    public async Task<ImportStep> Take(ImportForm form, bool topNotesOnly, CancellationToken stop = default)
    {
        var reading = new MusicReading { TopNotesOnly = topNotesOnly };
        if (string.IsNullOrEmpty(form.Ticket))
        {
            return (await Upload.Of(form.File, form.Text, stop)).TryGet(out var upload, out var fault)
                ? First(upload, reading)
                : new ImportStep.Refused(fault);
        }

        return waiting.Find(form.Ticket) is { } known
            ? Chosen(known, form, reading)
            : new ImportStep.Refused(
                new Fault("the file is no longer at hand", Right: "the same file, chosen once more")
            );
    }

    private ImportStep First(Upload upload, MusicReading reading)
    {
        if (!ReadUpload.Read(upload, reading).TryGet(out var import, out var fault))
        {
            return new ImportStep.Refused(Named(fault, upload));
        }

        // One line that can't be played is no reason to refuse the others.
        return import.Lines.Length > 1 ? Ask(upload, import) : Playable(upload, import);
    }

    private static ImportStep Playable(Upload upload, MusicImport import) =>
        ReadUpload.Unplayable(import) is { } fault
            ? new ImportStep.Refused(Named(fault, upload))
            : new ImportStep.Read(upload, import);

    private ImportStep.Choose Ask(Upload upload, MusicImport import) =>
        new(waiting.Keep(upload), upload.FileName, import.Lines);

    private ImportStep Chosen(Upload upload, ImportForm form, MusicReading reading)
    {
        var lines = MusicFile.Read(upload.Bytes, reading).OrThrow().Lines;
        var line = lines.ElementAtOrDefault(form.Line ?? -1);
        if (line is null)
        {
            return Ask(upload, lines, form.Ticket!);
        }

        var wanted = line.Reading with { TopNotesOnly = reading.TopNotesOnly };
        if (!ReadUpload.Read(upload, wanted).TryGet(out var import, out var fault))
        {
            return new ImportStep.Refused(Named(fault, upload));
        }

        var step = Playable(upload, import);
        if (step is ImportStep.Read)
            waiting.Forget(form.Ticket);

        return step;
    }

    private static ImportStep.Choose Ask(Upload upload, IReadOnlyList<MusicLine> lines, string ticket) =>
        new(ticket, upload.FileName, lines);

    private static Fault Named(Fault fault, Upload upload) =>
        upload.FileName.Length == 0
            ? fault
            : fault with
            {
                Where = fault.Where.Length == 0 ? upload.FileName : $"{upload.FileName}, {fault.Where}",
            };
}
