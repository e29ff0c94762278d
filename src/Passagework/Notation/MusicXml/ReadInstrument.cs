using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>The instrument that a part is for.</summary>
internal static class ReadInstrument
{
    private const int MostFrets = 36;
    private const int MostCapo = 12;

    /// <summary>Strings and capo as the file tells them, else those asked for; enough frets for all places told.</summary>
    public static Fretboard Of(ReadScore score, Lane lane, IReadOnlyList<ReadNote> notes, Fretboard usual)
    {
        var part = lane.Part;
        var staff = StaffOf(lane);
        var told = staff is null ? null : TuningOf(staff, part);
        var neck = told is null
            ? usual with
            {
                Tuning = Widened(usual.Tuning, notes),
            }
            : usual with
            {
                Tuning = told,
            };
        if (staff?.Capo is { } capo)
        {
            if (capo is < 0 or > MostCapo)
            {
                part.Remarks.Add($"capo at fret {capo} left out", part.SpotAt(0, Fraction.Zero));
            }
            else
            {
                neck = neck with { Capo = capo };
            }
        }

        var highest = notes.Max(note =>
            note.Signs is { String: not null, Fret: { } fret and <= MostFrets } ? fret : 0
        );
        var written = score.Facts.TryGetValue(ScoreHeaderXml.FretsField, out var text)
            ? ReadNumbers.Whole(text)
            : null;
        var frets = written is >= 12 and <= MostFrets ? written.Value : neck.Frets;
        return neck with { Frets = Math.Clamp(highest + neck.Capo, frets, MostFrets) };
    }

    // A tab staff tells best, then the staff of the voice.
    private static ReadStaff? StaffOf(Lane lane)
    {
        var telling = lane
            .Part.Staves.OrderBy(staff => staff.Key)
            .Select(staff => staff.Value)
            .Where(staff => staff.OpenStrings.Count > 0 || staff.Capo is not null)
            .ToList();
        return telling.Find(staff => staff.IsTab) ?? telling.FirstOrDefault();
    }

    private static Tuning? TuningOf(ReadStaff staff, ReadPart part)
    {
        if (staff.OpenStrings.Count == 0)
        {
            return null;
        }

        // Lines count from the lowest, as tunings are written.
        var text = string.Join(' ', staff.OpenStrings.Values);
        if (
            !Tuning.TryParse(text, out var tuning)
            || staff.OpenStrings.Keys.Last() != staff.OpenStrings.Count
        )
        {
            part.Remarks.Add("strings that are not 4 to 8 left out", part.SpotAt(0, Fraction.Zero));
            return null;
        }

        return Tuning.Names.Select(Known).FirstOrDefault(known => SoundsAs(known, tuning)) ?? tuning;
    }

    private static bool SoundsAs(Tuning known, Tuning tuning) =>
        known.StringCount == tuning.StringCount
        && Enumerable.Range(1, tuning.StringCount).All(number => known.Open(number) == tuning.Open(number));

    // Where the file tells no strings but numbers more of them than there are.
    private static Tuning Widened(Tuning usual, IReadOnlyList<ReadNote> notes) =>
        notes.Max(note => note.Signs.String ?? 1) switch
        {
            var most when most <= usual.StringCount => usual,
            7 => Known("seven-string"),
            8 => Known("eight-string"),
            _ => usual,
        };

    private static Tuning Known(string name) =>
        Tuning.TryParse(name, out var tuning) ? tuning : throw new System.Diagnostics.UnreachableException();
}
