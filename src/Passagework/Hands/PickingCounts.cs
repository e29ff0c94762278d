using Passagework.Exercises;
using Passagework.Instrument;

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
        var tally = new PickingTally(spacingMm);
        for (var i = 1; i < struck.Length; i++)
        {
            tally.Add(struck[i - 1].State, struck[i].State);
        }

        return new PickingCounts
        {
            SameString = tally.Of(ChangeKind.SameString),
            Inside = tally.Of(ChangeKind.Inside),
            Outside = tally.Of(ChangeKind.Outside),
            SweepSteps = tally.Of(ChangeKind.SweepStep),
            Against = tally.Of(ChangeKind.Against),
            Skips = tally.Skips,
            InsideSkips = tally.SkipsOf(ChangeKind.Inside),
            OutsideSkips = tally.SkipsOf(ChangeKind.Outside),
            Reversals = tally.Reversals,
            AfterDown = tally.AfterDown,
            AfterUp = tally.AfterUp,
            Strokes = struck.Length,
            Slurs = line.Line.Notes.Length - struck.Length,
            SameFingerAgain = tally.SameFingerAgain,
            BackwardCrossings = tally.BackwardCrossings,
            LongestSweep = tally.LongestSweep,
            TravelSpacings = tally.TravelMm / spacingMm,
            Hops = tally.Hops,
            GroupStarts = GroupStartsOf(line),
            OneStrokeForEachPlace = OneStrokeEach(line),
        };
    }

    /// <summary>D, U, p, i, m, a, or - for none.</summary>
    public static char LetterOf(Stroke stroke) => "-DUpima"[(int)stroke];

    private static bool OneStrokeEach(PlannedLine line)
    {
        var strokes = new Dictionary<Place, Stroke>();
        foreach (var note in line.Strokes.Struck)
        {
            var place = line.Fingering.Notes[note.Note].Place;
            if (!strokes.TryAdd(place, note.State.Action) && strokes[place] != note.State.Action)
            {
                return false;
            }
        }

        return true;
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
