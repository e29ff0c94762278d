using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Reads divisions, metre, key, clefs, strings and transposition.</summary>
internal sealed class AttributesReader(XmlWalk walk, ReadPart part)
{
    private static readonly Fraction MostDivisions = Fraction.Of(1_000_000);

    public Fault? Read()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            Fault? fault = null;
            switch (name)
            {
                case "divisions":
                    fault = ReadDivisions(walk.Text());
                    break;
                case "key":
                    ReadKey();
                    break;
                case "time":
                    fault = ReadTime();
                    break;
                case "clef":
                    ReadClef();
                    break;
                case "staff-details":
                    new StaffDetailsReader(walk, part).Read(NumberOf());
                    break;
                case "transpose":
                    ReadTransposition();
                    break;
            }

            if (fault is not null)
            {
                return fault;
            }
        }

        return null;
    }

    private int NumberOf() =>
        Math.Clamp(ReadNumbers.Whole(walk.Attribute("number")) ?? 1, 1, ReadPart.MostStaves);

    private Fault? ReadDivisions(string text)
    {
        if (
            ReadNumbers.Exact(text) is { } divisions
            && divisions > Fraction.Zero
            && divisions <= MostDivisions
        )
        {
            part.Divisions = divisions;
            return null;
        }

        return new Fault(
            $"{Quote.Short(text)} divisions of a quarter",
            part.Spot,
            "above 0, at most 1000000"
        );
    }

    private void ReadKey()
    {
        int? fifths = null;
        string? mode = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            fifths = name == "fifths" ? ReadNumbers.Whole(walk.Text()) : fifths;
            mode = name == "mode" ? walk.Text() : mode;
        }

        if (fifths is not (>= -7 and <= 7))
        {
            part.Remark("key signature of another kind left out");
            return;
        }

        var key = new ScoreKey(fifths.Value, mode == "none" ? null : mode);
        if (part.Key is { } before && before != key)
        {
            part.Remark("change of key left out");
        }

        part.Key ??= key;
    }

    private Fault? ReadTime()
    {
        var beats = new List<string>();
        var units = new List<string>();
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "beats":
                    beats.Add(walk.Text());
                    break;
                case "beat-type":
                    units.Add(walk.Text());
                    break;
                case "senza-misura":
                    part.Remark("music without metre, read as 4/4");
                    break;
            }
        }

        if (beats.Count == 0)
        {
            return null;
        }

        var written = $"{string.Join('+', beats)}/{string.Join('+', units.Distinct())}";
        if (MeterOf(beats, units) is not { } meter)
        {
            return new Fault(
                $"the metre {Quote.Short(written)}",
                part.Spot,
                "1 to 16 beats of a half, quarter, eighth or sixteenth note"
            );
        }

        Change(meter);
        return null;
    }

    // Beats may be sums such as 3+2, of one unit.
    private static Meter? MeterOf(List<string> beats, List<string> units)
    {
        var sum = 0;
        foreach (var term in beats.SelectMany(text => text.Split('+')))
        {
            var number = ReadNumbers.Whole(term.Trim()) ?? 0;
            if (number is < 1 or > 16)
            {
                return null;
            }

            sum = Math.Min(sum + number, 99);
        }

        var text = string.Create(CultureInfo.InvariantCulture, $"{sum}/{units.FirstOrDefault() ?? ""}");
        return units.Distinct().Count() == 1 && Meter.TryParse(text, out var meter) ? meter : null;
    }

    private void Change(Meter meter)
    {
        if (part.Meter is { } before && before != meter)
        {
            part.Remark($"change of metre to {meter}; the line keeps {before} and its exact times");
        }

        part.Meter ??= meter;
        part.NominalBar = meter.Bar;
    }

    private void ReadClef()
    {
        var staff = part.Staff(NumberOf());
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name == "sign")
            {
                staff.IsTab |= string.Equals(walk.Text(), "TAB", StringComparison.OrdinalIgnoreCase);
            }
        }
    }

    private void ReadTransposition()
    {
        var number = walk.Attribute("number");
        var semitones = 0;
        int? letters = null;
        var octaves = 0;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "chromatic":
                    semitones = Bounded(walk.Text());
                    break;
                case "diatonic":
                    letters = Bounded(walk.Text());
                    break;
                case "octave-change":
                    octaves = Bounded(walk.Text());
                    break;
                case "double":
                    part.Remark("doubling in the octave left out");
                    break;
            }
        }

        var up = new Interval(
            (letters ?? UsualLetters(semitones)) + (7 * octaves),
            semitones + (12 * octaves)
        );
        foreach (
            var staff in number.Length == 0 ? Enumerable.Range(1, ReadPart.MostStaves) : [Clamped(number)]
        )
        {
            part.Staff(staff).Transposition = up;
        }
    }

    private static int Clamped(string number) =>
        Math.Clamp(ReadNumbers.Whole(number) ?? 1, 1, ReadPart.MostStaves);

    private static int Bounded(string text) => Math.Clamp(ReadNumbers.Whole(text) ?? 0, -48, 48);

    // Where only semitones are told: seconds, thirds and so on as major scales have them.
    private static int UsualLetters(int semitones)
    {
        ReadOnlySpan<int> letters = [0, 1, 1, 2, 2, 3, 3, 4, 5, 5, 6, 6];
        var above = WholeNumbers.Modulo(semitones, 12);
        return letters[above] + (7 * ((semitones - above) / 12));
    }
}

/// <summary>Reads the strings of a staff.</summary>
internal sealed class StaffDetailsReader(XmlWalk walk, ReadPart part)
{
    private const int MostLines = 20;

    public void Read(int number)
    {
        var staff = part.Staff(number);
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "staff-lines":
                    staff.Lines = ReadNumbers.Whole(walk.Text());
                    break;
                case "capo":
                    staff.Capo = ReadNumbers.Whole(walk.Text());
                    break;
                case "staff-tuning":
                    ReadString(staff);
                    break;
            }
        }
    }

    private void ReadString(ReadStaff staff)
    {
        var line = ReadNumbers.Whole(walk.Attribute("line"));
        var letter = -1;
        var alter = 0;
        int? octave = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "tuning-step":
                    letter = ScorePitch.LetterOf(walk.Text());
                    break;
                case "tuning-alter":
                    alter = Math.Clamp(ReadNumbers.Whole(walk.Text()) ?? 0, -3, 3);
                    break;
                case "tuning-octave":
                    octave = ReadNumbers.Whole(walk.Text());
                    break;
            }
        }

        if (letter >= 0 && octave is >= 0 and <= 9 && line is >= 1 and <= MostLines)
        {
            staff.OpenStrings[line.Value] = new SpelledPitch(NoteName.Of(letter, alter), octave.Value);
        }
        else
        {
            part.Remark("tuning of a string that is no pitch left out");
        }
    }
}
