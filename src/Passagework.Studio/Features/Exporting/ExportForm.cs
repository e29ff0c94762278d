using System.Collections.Immutable;

namespace Passagework.Studio.Features.Exporting;

/// <summary>A form in which an exercise leaves the studio.</summary>
/// <param name="Ending">How its file name ends, and its place in the address.</param>
/// <param name="Name">What it is called on the page.</param>
/// <param name="Use">What it is good for, in a few words.</param>
/// <param name="ContentType">Its media type.</param>
public sealed record ExportForm(string Ending, string Name, string Use, string ContentType)
{
    /// <summary>All forms, in the order in which they are listed.</summary>
    public static ImmutableArray<ExportForm> All { get; } =
    [
        new("sheet.pdf", "Sheet", "one page to practise from", "application/pdf"),
        new("sheet.svg", "Sheet, as a picture", "the same page for a screen", "image/svg+xml"),
        new("pdf", "Pages", "the whole music to print", "application/pdf"),
        new("txt", "Text tab", "to paste into a message", "text/plain; charset=utf-8"),
        new("musicxml", "MusicXML", "for programs that engrave", "application/vnd.recordare.musicxml+xml"),
        new("mxl", "MusicXML, packed", "the same, smaller", "application/vnd.recordare.musicxml"),
        new("mid", "MIDI", "for programs that play", "audio/midi"),
        new("wav", "Sound", "to hear it anywhere", "audio/wav"),
        new("svg", "Picture, sharp", "for a page or a book", "image/svg+xml"),
        new("png", "Picture", "for a message", "image/png"),
        new("json", "The idea", "to open here again", "application/json"),
    ];

    /// <summary>The form of an ending; null when there is none.</summary>
    public static ExportForm? Of(string ending) => All.FirstOrDefault(form => form.Ending == ending);
}
