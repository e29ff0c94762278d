using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Reads one bar of one part after the other.</summary>
internal sealed class BarReader(XmlWalk walk, ReadPart part)
{
    private const int MostBars = 100_000;
    private const int MostNotes = 100_000;
    private const int LongestNumber = 12;
    private static readonly Fraction LongestBar = Fraction.Of(64);

    /// <summary>Reads the bar just found; the fault that ends the reading, if any.</summary>
    public Fault? Read(string number, bool isImplicit)
    {
        if (part.Bars.Count == MostBars)
        {
            return new Fault("more than 100,000 bars", walk.Spot, "a shorter piece");
        }

        part.Bars.Add(new ReadBar { Number = Clean(number), Implicit = isImplicit });
        part.Cursor = Fraction.Zero;
        part.ChordOnset = Fraction.Zero;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (ReadElement(name) is { } fault)
            {
                return fault;
            }
        }

        Close();
        return null;
    }

    private Fault? ReadElement(string name)
    {
        switch (name)
        {
            case "note":
                return part.InScore.Notes < MostNotes
                    ? new NoteReader(walk, part).Read()
                    : new Fault("more than 100,000 notes", part.Spot, "a shorter piece, or fewer parts");
            case "backup":
            case "forward":
                return Move(name);
            case "attributes":
                return new AttributesReader(walk, part).Read();
            case "direction":
            case "sound":
            case "harmony":
                new DirectionReader(walk, part).Read(name);
                return null;
            case "barline":
                new BarlineReader(walk, part).Read();
                return null;
            case "grouping":
                ReadGrouping();
                return null;
            default:
                return null;
        }
    }

    private Fault? Move(string name)
    {
        Fault? fault = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var child); )
        {
            if (child != "duration")
            {
                continue;
            }

            if (!ReadLength.Of(walk.Text(), part).TryGet(out var length, out fault))
            {
                continue;
            }

            var to = name == "forward" ? part.Cursor + length : part.Cursor - length;
            if (to < Fraction.Zero)
            {
                part.Remark("goes back before its bar line; taken as the bar line");
                to = Fraction.Zero;
            }

            fault = MoveTo(part, to);
        }

        return fault;
    }

    /// <summary>Sets where the next note stands, which also sets how long the bar is.</summary>
    public static Fault? MoveTo(ReadPart part, Fraction cursor)
    {
        part.Cursor = cursor;
        if (cursor > part.Bar.Length)
        {
            part.Bar.Length = cursor;
        }

        return cursor <= LongestBar
            ? null
            : new Fault("a bar longer than 64 whole notes", part.Spot, "bar lines");
    }

    private void ReadGrouping()
    {
        var isCell = walk.Attribute("member-of") == GroupWords.MemberOf;
        var starts = walk.Attribute("type") == "start";
        int? group = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name == "feature" && walk.Attribute("type") == GroupWords.Feature)
            {
                group = ReadNumbers.Whole(walk.Text());
            }
        }

        if (isCell)
        {
            part.Group = starts ? group : null;
        }
    }

    // A bar without time in it lasts as long as the metre says.
    private void Close()
    {
        var bar = part.Bar;
        if (bar.Length == Fraction.Zero)
        {
            bar.Length = part.NominalBar;
        }
        else if (bar.Length != part.NominalBar && !bar.Implicit && part.Bars.Count > 1)
        {
            var than = bar.Length < part.NominalBar ? "shorter" : "longer";
            part.Remarks.Add($"bar {than} than its metre", part.SpotAt(part.Bars.Count - 1, Fraction.Zero));
        }
    }

    private static string Clean(string number)
    {
        var cut = number.Length <= LongestNumber ? number : number[..LongestNumber];
        var clean = new string([.. cut.Where(letter => !char.IsControl(letter))]);
        return clean.Length == 0 ? "?" : clean;
    }
}

/// <summary>Lengths as files write them.</summary>
internal static class ReadLength
{
    private const int LongestWholeNotes = 64;
    private const long FinestUnit = 1_000_000;
    private static readonly Fraction Longest = Fraction.Of(LongestWholeNotes);

    /// <summary>A duration in divisions as a fraction of a whole note; a fault names bar and beat.</summary>
    public static Outcome<Fraction> Of(string text, ReadPart part)
    {
        if (ReadNumbers.Exact(text) is not { } divisions || divisions < Fraction.Zero)
        {
            return new Fault($"{Quote.Short(text)} is no duration", part.Spot, "a number above 0");
        }

        var length = divisions / (part.Divisions * Fraction.Of(4));
        if (length > Longest || length.Denominator > FinestUnit)
        {
            return new Fault(
                $"a duration of {length} whole notes",
                part.Spot,
                "at most 64 whole notes, in parts no finer than 1/1000000"
            );
        }

        var unit = WholeNumbers.Lcm(part.Unit, length.Denominator);
        if (unit > FinestUnit)
        {
            return new Fault(
                $"{length} divides time too finely beside the other lengths",
                part.Spot,
                "lengths that are multiples of one unit, at least 1/1000000 of a whole note"
            );
        }

        part.Unit = unit;
        return length;
    }
}
