using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The voice that becomes the line.</summary>
/// <param name="Part">Its part.</param>
/// <param name="Voice">Its name.</param>
/// <param name="IsTab">Whether it stands on a tab staff.</param>
internal sealed record Lane(ReadPart Part, string Voice, bool IsTab)
{
    public bool Has(ReadNote note) => note.Voice == Voice && Part.Staff(note.Staff).IsTab == IsTab;
}

/// <summary>Chooses part and voice.</summary>
internal static class LaneChoice
{
    public static ImmutableArray<ScorePart> PartsOf(ReadScore score) => [.. score.Parts.Select(Describe)];

    public static Outcome<Lane> Choose(ReadScore score, MusicXmlReading options) =>
        PartOf(score, options.Part).Then(part => VoiceOf(part, options.Voice));

    private static ScorePart Describe(ReadPart part)
    {
        var voices = part
            .Notes.GroupBy(note => (note.Voice, part.Staff(note.Staff).IsTab))
            .Select(voice => new ScoreVoice(
                voice.Key.Voice,
                voice.Key.IsTab,
                voice.Count(),
                voice.Count(note => note.Signs is { String: not null, Fret: not null })
            ));
        return new ScorePart(part.Id, part.Name, part.Bars.Count, part.Unpitched, [.. voices]);
    }

    private static Outcome<ReadPart> PartOf(ReadScore score, string? asked)
    {
        if (asked is null)
        {
            return score.Parts.Find(part => part.Notes.Count > 0) is { } first ? first : NoNotes(score);
        }

        var number = ReadNumbers.Whole(asked) ?? 0;
        var found =
            score.Parts.Find(part => part.Id == asked)
            ?? score.Parts.Find(part => string.Equals(part.Name, asked, StringComparison.OrdinalIgnoreCase))
            ?? score.Parts.ElementAtOrDefault(number - 1);
        if (found is null)
        {
            return new Fault($"there is no part {Quote.Short(asked)}", Right: "one of " + Names(score));
        }

        return found.Notes.Count > 0
            ? found
            : new Fault(
                $"part {Quote.Short(asked)} has no pitched notes",
                Right: "another of " + Names(score)
            );
    }

    private static Fault NoNotes(ReadScore score) =>
        score.Parts.Exists(part => part.Unpitched > 0)
            ? new Fault("only percussion without pitch", Right: "a part with pitched notes")
            : new Fault("no notes in the file", Right: "a part with pitched notes");

    // The first ten are enough in one line.
    private static string Names(ReadScore score) =>
        string.Join(
            ", ",
            score.Parts.Take(10).Select(part => part.Name.Length > 0 ? $"{part.Id} ({part.Name})" : part.Id)
        );

    private static Outcome<Lane> VoiceOf(ReadPart part, string? asked)
    {
        var voices = Describe(part).Voices;
        var best = voices
            .Where(voice => asked is null || voice.Name == asked)
            .OrderBy(voice => voice.IsTab)
            .ThenByDescending(voice => voice.Notes)
            .FirstOrDefault();
        return best is null
            ? new Fault(
                string.Create(CultureInfo.InvariantCulture, $"there is no voice {Quote.Short(asked ?? "")}"),
                Right: "one of " + string.Join(", ", voices.Select(voice => voice.Name).Distinct().Take(10))
            )
            : new Lane(part, best.Name, best.IsTab);
    }
}
