using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Reads tempo and swing; words, dynamics, chord symbols and the like are left out with a remark.</summary>
internal sealed class DirectionReader(XmlWalk walk, ReadPart part)
{
    private static readonly string[] Jumps = ["dacapo", "dalsegno", "tocoda", "fine"];

    public void Read(string name)
    {
        switch (name)
        {
            case "sound":
                ReadSound();
                break;
            case "harmony":
                part.Remark("chord symbol left out");
                break;
            default:
                ReadDirection();
                break;
        }
    }

    private void ReadDirection()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "direction-type":
                    ReadType();
                    break;
                case "sound":
                    ReadSound();
                    break;
            }
        }
    }

    private void ReadType()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "metronome":
                    ReadMetronome();
                    break;
                case "words":
                    part.Remark($"text {Quote.Short(walk.Text())} left out");
                    break;
                case "dashes":
                    break;
                default:
                    part.Remark($"{Quote.Short(name)} left out");
                    break;
            }
        }
    }

    private void ReadMetronome()
    {
        NoteValue? unit = null;
        double? bpm = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "beat-unit":
                    unit = NoteValue.Named(walk.Text());
                    break;
                case "beat-unit-dot":
                    unit = unit is { Dots: < 2 } value ? value with { Dots = value.Dots + 1 } : unit;
                    break;
                case "per-minute":
                    bpm = ReadNumbers.Positive(walk.Text());
                    break;
            }
        }

        if (unit is not { } beat || bpm is not { } minute)
        {
            part.Remark("tempo mark without a number left out");
        }
        else if (part.Mark is { } before && before != (minute, beat.Length))
        {
            part.Remark("change of tempo left out");
        }
        else
        {
            part.Mark = (minute, beat.Length);
        }
    }

    private void ReadSound()
    {
        if (ReadNumbers.Positive(walk.Attribute("tempo")) is { } tempo)
        {
            if (part.QuarterTempo is { } before && !before.Equals(tempo))
            {
                part.Remark("change of tempo left out");
            }

            part.QuarterTempo ??= tempo;
        }

        foreach (var jump in Jumps.Where(jump => walk.Attribute(jump).Length > 0))
        {
            part.Remark($"jump '{jump}' not followed");
        }

        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name == "swing")
            {
                ReadSwing();
            }
        }
    }

    private void ReadSwing()
    {
        int? first = 1;
        int? second = 1;
        var pulse = Fraction.Of(1, 8);
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "first":
                    first = ReadNumbers.Whole(walk.Text());
                    break;
                case "second":
                    second = ReadNumbers.Whole(walk.Text());
                    break;
                case "swing-type":
                    pulse = walk.Text() == "16th" ? Fraction.Of(1, 16) : pulse;
                    break;
            }
        }

        if (first is not (>= 1 and <= 1000) || second is not (>= 1 and <= 1000))
        {
            part.Remark("swing that is no ratio left out");
            return;
        }

        var swing = new ReadSwing(Fraction.Of(first.Value, first.Value + second.Value), pulse);
        if (part.Swing is { } before && before != swing)
        {
            part.Remark("change of swing left out");
        }

        part.Swing ??= swing;
    }
}
