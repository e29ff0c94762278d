using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Reads what stands around one note.</summary>
internal sealed class NotationsReader(XmlWalk walk, ReadPart part, NoteSigns signs)
{
    private NoteSigns _signs = signs;

    public NoteSigns Read()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "technical":
                    ReadTechnical();
                    break;
                case "articulations":
                    ReadArticulations();
                    break;
                case "slide":
                case "glissando":
                    Join(Slur.Slide);
                    break;
                case "slur" when walk.Attribute("type") == "start":
                    _signs = _signs with { Curve = true };
                    break;
                case "tied":
                    ReadTied();
                    break;
                case "tuplet" or "slur":
                    break;
                case "ornaments":
                    ReadLeftOut();
                    break;
                default:
                    LeaveOut(name);
                    break;
            }
        }

        return _signs;
    }

    // Some files have only the picture of the tie.
    private void ReadTied()
    {
        switch (walk.Attribute("type"))
        {
            case "start":
                _signs = _signs with { TiedOn = true };
                break;
            case "stop":
                _signs = _signs with { TiedBack = true };
                break;
            case "continue":
                _signs = _signs with { TiedBack = true, TiedOn = true };
                break;
            case "let-ring":
                LeaveOut("let ring");
                break;
        }
    }

    private void ReadTechnical()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "string":
                    _signs = _signs with { String = ReadNumbers.Whole(walk.Text()) };
                    break;
                case "fret":
                    _signs = _signs with { Fret = ReadNumbers.Whole(walk.Text()) };
                    break;
                case "fingering":
                    ReadFinger(walk.Text());
                    break;
                case "pluck":
                    ReadPluck(walk.Text());
                    break;
                case "down-bow":
                    _signs = _signs with { Stroke = _signs.Stroke ?? Stroke.Down };
                    break;
                case "up-bow":
                    _signs = _signs with { Stroke = _signs.Stroke ?? Stroke.Up };
                    break;
                case "hammer-on":
                    Join(Slur.Hammer);
                    break;
                case "pull-off":
                    Join(Slur.Pull);
                    break;
                default:
                    LeaveOut(name);
                    break;
            }
        }
    }

    private void ReadFinger(string text)
    {
        if (ReadNumbers.Whole(text) is { } finger and >= 0 and <= 4)
        {
            _signs = _signs with { Finger = finger };
        }
        else
        {
            part.Remark($"finger {Quote.Short(text)} left out");
        }
    }

    private void ReadPluck(string text)
    {
        Stroke? stroke = text switch
        {
            "p" or "P" => Stroke.Thumb,
            "i" or "I" => Stroke.Index,
            "m" or "M" => Stroke.Middle,
            "a" or "A" => Stroke.Ring,
            _ => null,
        };
        if (stroke is null)
        {
            part.Remark($"plucking finger {Quote.Short(text)} left out");
        }

        _signs = _signs with { Stroke = stroke ?? _signs.Stroke };
    }

    private void ReadArticulations()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (name is "accent" or "strong-accent")
            {
                _signs = _signs with { Accent = true };
            }
            else
            {
                LeaveOut(name);
            }
        }
    }

    private void ReadLeftOut()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            LeaveOut(name);
        }
    }

    private void Join(Slur slur) =>
        _signs = walk.Attribute("type") switch
        {
            "stop" => _signs with { Into = slur },
            "start" => _signs with { OutOf = slur },
            _ => _signs,
        };

    private void LeaveOut(string name) => part.Remark($"{Quote.Short(name)} left out");
}
