using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>MusicXML 4.0, written and read. What is written how stands in <c>docs/musicxml.md</c>.</summary>
public static class MusicXml
{
    /// <summary>Writes what is played as one part, lines ending in a line feed.</summary>
    /// <returns>The file, or the note that no note value can be found for.</returns>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static Outcome<string> Write(Realization realization, MusicXmlWriting? options = null) =>
        MusicXmlWriter.Write(realization, options ?? new MusicXmlWriting());
}
