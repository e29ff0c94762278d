using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>What the picking hand does, counted from struck note to struck note; slurred notes are left out.</summary>
public sealed record PickingCounts
{
    /// <summary>Moves that stay on the string.</summary>
    public int SameString { get; private init; }

    /// <summary>Inside changes, over skipped strings too.</summary>
    public int Inside { get; private init; }

    /// <summary>Outside changes, over skipped strings too.</summary>
    public int Outside { get; private init; }

    /// <summary>Changes that carry one stroke on, over skipped strings too.</summary>
    public int SweepSteps { get; private init; }

    /// <summary>Changes that repeat a stroke against the crossing.</summary>
    public int Against { get; private init; }

    /// <summary>Changes with at least one string between, of any kind.</summary>
    public int Skips { get; private init; }

    /// <summary>Inside changes with at least one string between.</summary>
    public int InsideSkips { get; private init; }

    /// <summary>Outside changes with at least one string between.</summary>
    public int OutsideSkips { get; private init; }

    /// <summary>Moves at which the plectrum turns.</summary>
    public int Reversals { get; private init; }

    /// <summary>String changes after a down-stroke.</summary>
    public int AfterDown { get; private init; }

    /// <summary>String changes after an up-stroke.</summary>
    public int AfterUp { get; private init; }

    /// <summary>Struck notes.</summary>
    public int Strokes { get; private init; }

    /// <summary>Slurred notes.</summary>
    public int Slurs { get; private init; }

    /// <summary>Moves in which a plucking finger plays twice running.</summary>
    public int SameFingerAgain { get; private init; }

    /// <summary>Moves in which the finger that rests nearer the ceiling plays nearer the floor.</summary>
    public int BackwardCrossings { get; private init; }

    /// <summary>Notes of the longest run of sweep steps between neighbouring strings; 0 without one.</summary>
    public int LongestSweep { get; private init; }

    /// <summary>Distance travelled by the plectrum between strokes, in string spacings.</summary>
    public double TravelSpacings { get; private init; }

    /// <summary>Strings hopped over by the plectrum between strokes.</summary>
    public int Hops { get; private init; }

    /// <summary>The first stroke of each group: D, U, a plucking finger's letter, or - for a slurred start.</summary>
    public string GroupStarts { get; private init; } = "";

    /// <summary>Group starts whose stroke differs from the start before.</summary>
    public int Flips => GroupStarts.Zip(GroupStarts.Skip(1)).Count(pair => pair.First != pair.Second);

    /// <summary>Whether every place on the neck always gets the same stroke.</summary>
    public bool OneStrokeForEachPlace { get; private init; }

    internal static PickingCounts Of(PlannedLine line, double spacingMm)
    {
        var struck = line.Strokes.Struck;
        var moves = struck.Zip(struck.Skip(1), (a, b) => (From: a.State, To: b.State)).ToArray();
        var picked = moves.Where(move => IsPick(move.From) && IsPick(move.To)).ToArray();
        var changes = Array.ConvertAll(picked, move => StrokeChange.Of(move.From, move.To));
        var crossing = moves.Where(move => move.From.String != move.To.String).ToArray();
        var travels = Array.ConvertAll(picked, move => PlectrumTravel.Of(move.From, move.To, spacingMm));
        return new PickingCounts
        {
            SameString = Kind(changes, ChangeKind.SameString),
            Inside = Kind(changes, ChangeKind.Inside),
            Outside = Kind(changes, ChangeKind.Outside),
            SweepSteps = Kind(changes, ChangeKind.SweepStep),
            Against = Kind(changes, ChangeKind.Against),
            Skips = crossing.Count(move => Math.Abs(move.From.String - move.To.String) > 1),
            InsideSkips = changes.Count(change => change is { Kind: ChangeKind.Inside, Distance: > 1 }),
            OutsideSkips = changes.Count(change => change is { Kind: ChangeKind.Outside, Distance: > 1 }),
            Reversals = picked.Count(move => move.From.Action != move.To.Action),
            AfterDown = crossing.Count(move => move.From.Action == Stroke.Down),
            AfterUp = crossing.Count(move => move.From.Action == Stroke.Up),
            Strokes = struck.Length,
            Slurs = line.Line.Notes.Length - struck.Length,
            SameFingerAgain = moves.Count(move => !IsPick(move.To) && move.From.Action == move.To.Action),
            BackwardCrossings = moves.Count(IsBackward),
            LongestSweep = LongestSweepOf(moves),
            TravelSpacings = travels.Sum(travel => travel.Millimetres) / spacingMm,
            Hops = travels.Sum(travel => travel.Hops),
            GroupStarts = GroupStartsOf(line),
            OneStrokeForEachPlace = struck
                .GroupBy(note => line.Fingering.Notes[note.Note].Place, note => note.State.Action)
                .All(place => place.Distinct().Count() == 1),
        };
    }

    /// <summary>D, U, p, i, m, a, or - for none.</summary>
    public static char LetterOf(Stroke stroke) => "-DUpima"[(int)stroke];

    private static bool IsPick(StrokeState state) => state.Action is Stroke.Down or Stroke.Up;

    private static int Kind(StrokeChange[] changes, ChangeKind kind) =>
        changes.Count(change => change.Kind == kind);

    private static bool IsBackward((StrokeState From, StrokeState To) move) =>
        move.From.Action >= Stroke.Index
        && move.To.Action >= Stroke.Index
        && move.From.Action != move.To.Action
        && PluckRules.IsBackward(move.From, move.To);

    private static int LongestSweepOf((StrokeState From, StrokeState To)[] moves)
    {
        var (longest, run) = (0, 0);
        foreach (var (from, to) in moves)
        {
            var swept =
                IsPick(from)
                && IsPick(to)
                && StrokeChange.Of(from, to) is { Kind: ChangeKind.SweepStep, Distance: 1 };
            run = swept ? run + 1 : 0;
            longest = Math.Max(longest, run);
        }

        return longest == 0 ? 0 : longest + 1;
    }

    private static string GroupStartsOf(PlannedLine line)
    {
        var letters = new List<char>();
        int? last = null;
        foreach (var note in line.Line.Notes)
        {
            if (note.Group is { } group && group != last)
            {
                letters.Add(LetterOf(line.Strokes.Strokes[note.Index]));
                last = group;
            }
        }

        return string.Concat(letters);
    }
}
