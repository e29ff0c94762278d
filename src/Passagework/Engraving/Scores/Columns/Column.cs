using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>What begins at one time, with everything that is written for it. Its x is the centre of its heads.</summary>
internal sealed class Column
{
    private static readonly double[] NoShift = [0];
    private SideMarks? _sides;
    private SideMarks? _restatedSides;

    /// <summary>Value, beams, ties and tuplet.</summary>
    public required ScoreNote Written { get; init; }

    /// <summary>Note heads from low to high; empty for a rest.</summary>
    public required ImmutableArray<Head> Heads { get; init; }

    /// <summary>Which bar, from 0.</summary>
    public required int Bar { get; init; }

    /// <summary>Name that its marks begin with.</summary>
    public required string Name { get; init; }

    /// <summary>Whether a bar line follows.</summary>
    public bool EndsBar { get; init; }

    /// <summary>What is said when counting; empty where nothing is written.</summary>
    public string Count { get; init; } = "";

    /// <summary>Whether a felt beat begins here.</summary>
    public bool OnBeat { get; init; }

    /// <summary>The plectrum's stroke if it is written.</summary>
    public Stroke Stroke { get; init; }

    /// <summary>The plucking fingers if they are written, from low to high.</summary>
    public ImmutableArray<Stroke> Plucks { get; init; } = [];

    /// <summary>The string in its circle if it is written.</summary>
    public int? StringNumber { get; init; }

    /// <summary>The letter of the group that begins here.</summary>
    public string? GroupLetter { get; init; }

    /// <summary>The group it belongs to.</summary>
    public int? Group { get; init; }

    /// <summary>The position from here on, if it is new.</summary>
    public string? Position { get; init; }

    /// <summary>Whether it is the first position of all.</summary>
    public bool IsFirstPosition { get; init; }

    /// <summary>Chord symbols that begin here or before the next column.</summary>
    public ImmutableArray<PlacedText> Chords { get; init; } = [];

    /// <summary>Words that begin here or before the next column.</summary>
    public ImmutableArray<PlacedText> Words { get; init; } = [];

    /// <summary>How its note is reached.</summary>
    public Slur Into { get; init; }

    /// <summary>Whether its accent is written.</summary>
    public bool Accent { get; init; }

    /// <summary>Strings dragged through before it, in order.</summary>
    public ImmutableArray<int> Raked { get; init; } = [];

    /// <summary>How its string is bent; null where it is not, or only held.</summary>
    public ScoreBend? Bend { get; init; }

    /// <summary>Whether it is held with vibrato, also where the note goes on from before.</summary>
    public bool Vibrato { get; init; }

    /// <summary>Whether it is written an octave lower under a line that says so.</summary>
    public bool UnderOctave { get; init; }

    /// <summary>What the beams do here; empty for a flag or none.</summary>
    public ImmutableArray<BeamMark> Beams { get; set; } = [];

    /// <summary>Whether the stem points up.</summary>
    public bool Up
    {
        get;
        set
        {
            if (field != value)
            {
                (_sides, _restatedSides) = (null, null);
            }

            field = value;
        }
    }

    /// <summary>The columns that share a beam with it; itself alone without one.</summary>
    public ImmutableArray<Column> Run { get; set; } = [];

    /// <summary>Where it stands on its line, in spaces from the line's start.</summary>
    public double X { get; set; }

    /// <summary>Whether it is silent.</summary>
    public bool IsRest => Heads.IsEmpty;

    /// <summary>Whether the note begins here, not only held on.</summary>
    public bool Begins => !IsRest && !Written.TiedBack;

    /// <summary>Whether it has a stem.</summary>
    public bool HasStem => !IsRest && Written.Value.Halvings >= 1;

    /// <summary>Whether a head needs ledger lines; the outermost do first.</summary>
    public bool OnLedgers => !IsRest && (Heads[0].OnLedgers || Heads[^1].OnLedgers);

    /// <summary>Flags drawn at its stem.</summary>
    public int Flags => Run.Length > 1 ? 0 : Written.Value.Flags;

    /// <summary>How far each head stands off the column: of two on neighbouring places one goes to the stem's other side.</summary>
    public double[] Shifts(double halfHead)
    {
        if (Heads.Length == 1)
        {
            return NoShift;
        }

        var shifts = new double[Heads.Length];
        var outward = ((2 * halfHead) - Pens.Stem) * (Up ? 1 : -1);
        for (var step = 1; step < Heads.Length; step++)
        {
            // From the end away from the stem's tip.
            var (at, before) = Up ? (step, step - 1) : (Heads.Length - 1 - step, Heads.Length - step);
            var meets = Math.Abs(Heads[at].Position - Heads[before].Position) <= 1;
            shifts[at] = meets && shifts[before] == 0 ? outward : 0;
        }

        return shifts;
    }

    /// <summary>What stands left of its heads; worked out once for each way in which it is asked for.</summary>
    /// <param name="restated">Whether signs of held notes are shown again.</param>
    /// <param name="fingerScale">Scale of the fingers; null for none. The same for a whole score.</param>
    public SideMarks Sides(bool restated, double? fingerScale)
    {
        ref var sides = ref _sides;
        if (restated)
        {
            sides = ref _restatedSides;
        }

        return sides ??= SideMarks.Of(
            this,
            Block.BoxOf(HeadGlyphs.Of(this), 1).Width / 2,
            restated,
            fingerScale
        );
    }

    /// <summary>Index of its note; null for a rest.</summary>
    public int? Note => Written.Note?.Note.Index;
}

/// <summary>One note head.</summary>
/// <param name="Tone">How it is played.</param>
/// <param name="Position">Half spaces above the middle line.</param>
/// <param name="Sign">Its accidental.</param>
internal sealed record Head(PlayedTone Tone, int Position, HeadSign Sign)
{
    /// <summary>Height of its centre.</summary>
    public double Y => StaffPlace.Y(Position);

    /// <summary>Whether it needs ledger lines.</summary>
    public bool OnLedgers => Math.Abs(Position) >= StaffPlace.FirstLedger;
}

/// <summary>An accidental.</summary>
/// <param name="Alteration">−3 to 3.</param>
/// <param name="Shown">Whether it is drawn.</param>
/// <param name="Courtesy">Whether it stands in brackets.</param>
/// <param name="Foreign">Whether the key has the note otherwise; a held note then shows it again on a new line.</param>
internal readonly record struct HeadSign(int Alteration, bool Shown, bool Courtesy, bool Foreign)
{
    /// <summary>Whether it is drawn when its column begins a line.</summary>
    public bool ShownAt(bool lineStart) => Shown || (lineStart && Foreign);
}

/// <summary>Heights on a staff of five lines.</summary>
internal static class StaffPlace
{
    /// <summary>From the top line to the bottom line.</summary>
    public const double Height = 4;

    /// <summary>Distance from the middle line, in half spaces, of the first ledger line.</summary>
    public const int FirstLedger = 6;

    private const double Middle = 2;

    /// <summary>Height of a position, in spaces below the top line.</summary>
    public static double Y(int position) => Middle - (position / 2.0);
}
