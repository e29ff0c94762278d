using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Sound.Performance;

/// <summary>
/// What notes do to the strings, in their order: a rake into the note, its tone, or the tones of its chord one after the
/// other.
/// </summary>
internal sealed class EventWriter(Fretboard instrument, PlayingManner manner)
{
    /// <summary>From string to string of a brush or a rake (assumed); less where there is no room before the note.</summary>
    private const double BrushSeconds = 0.012;
    private const double RoomShare = 0.25;
    private const double RakedStrength = 0.5;
    private const double Instant = 1e-6;

    private readonly List<StringEvent> _events = [];
    private readonly (int Key, int Finger, double End)[] _sounding = new (int, int, double)[9];
    private double _lastOnset;

    /// <summary>In order of time.</summary>
    public IEnumerable<StringEvent> Events => _events.OrderBy(e => e.Seconds).ThenByDescending(e => e.String);

    /// <summary>Adds one note.</summary>
    /// <param name="note">The note.</param>
    /// <param name="ends">Where each of its tones ends, in their order.</param>
    /// <param name="strength">How hard it is struck, 0 to 1.</param>
    public void Add(UnrolledNote note, IReadOnlyList<StringEnd> ends, double strength)
    {
        AddRake(note, strength);
        var tones = note.Played.Tones.ToList();
        var brush = Brush(note, tones);
        for (var i = 0; i < tones.Count; i++)
        {
            var tone = tones[i];
            var action = ActionOf(note, tone);
            _events.Add(
                new StringEvent
                {
                    Seconds = note.OnsetSeconds - brush(tone.Place.String),
                    String = tone.Place.String,
                    Key = tone.Tone.Midi,
                    EndSeconds = ends[i].Seconds,
                    Release = ends[i].How,
                    Action = action,
                    Strength = strength,
                    PalmMuted = manner == PlayingManner.PalmMuted,
                    Note = note.Played.Note.Index,
                }
            );
            _sounding[tone.Place.String] = (tone.Tone.Midi, tone.Finger, ends[i].Seconds);
        }

        _lastOnset = note.OnsetSeconds;
    }

    // The plectrum drags from the outer string to the note's own, which it reaches at the onset.
    private void AddRake(UnrolledNote note, double strength)
    {
        if (note.Played.RakedFrom is not { } from)
        {
            return;
        }

        var to = note.Played.Tones.Max(tone => tone.Place.String);
        to = from < to ? to : note.Played.Tones.Min(tone => tone.Place.String);
        var step = Step(note, Math.Abs(from - to));
        for (var number = from; number != to; number += Math.Sign(to - from))
        {
            _events.Add(
                new StringEvent
                {
                    Seconds = note.OnsetSeconds - (step * Math.Abs(number - to)),
                    String = number,
                    Key = instrument.Tuning.Open(number).Midi + instrument.Capo,
                    EndSeconds = note.OnsetSeconds,
                    Action = StringAction.Rake,
                    Strength = RakedStrength * strength,
                    Note = note.Played.Note.Index,
                }
            );
        }
    }

    // A plectrum crosses a chord string by string and reaches the last at the onset; fingers pluck at once.
    private Func<int, double> Brush(UnrolledNote note, List<PlayedTone> tones)
    {
        var stroke = note.Played.Stroke;
        if (tones.Count < 2 || stroke is not (Stroke.Down or Stroke.Up))
        {
            return _ => 0;
        }

        var strings = tones.Where(tone => tone.Stroke == stroke).Select(tone => tone.Place.String).ToList();
        var last = stroke == Stroke.Down ? strings.Min() : strings.Max();
        var step = Step(note, strings.Max() - strings.Min());
        return number => strings.Contains(number) ? step * Math.Abs(number - last) : 0;
    }

    private double Step(UnrolledNote note, int steps)
    {
        var room = RoomShare * (note.OnsetSeconds - _lastOnset);
        return Math.Min(BrushSeconds, room / Math.Max(1, steps));
    }

    private StringAction ActionOf(UnrolledNote note, PlayedTone tone) =>
        tone.Stroke switch
        {
            Stroke.Down => StringAction.Down,
            Stroke.Up => StringAction.Up,
            Stroke.Thumb => StringAction.Thumb,
            Stroke.Index or Stroke.Middle or Stroke.Ring => StringAction.Finger,
            _ => Slurred(note, tone),
        };

    private StringAction Slurred(UnrolledNote note, PlayedTone tone)
    {
        var (key, finger, end) = _sounding[tone.Place.String];
        if (end < note.OnsetSeconds - Instant)
        {
            // Nothing sounds that could be slurred: what is cut out of a line begins with a stroke, else a finger
            // comes down from nowhere.
            return _events.Count == 0 ? StringAction.Down : StringAction.HammerOn;
        }

        return note.Played.Note.Slur switch
        {
            Slur.Slide => StringAction.Slide,
            Slur.Hammer => StringAction.HammerOn,
            Slur.Pull => StringAction.PullOff,
            _ when finger == tone.Finger && finger > 0 => StringAction.Slide,
            _ => tone.Tone.Midi >= key ? StringAction.HammerOn : StringAction.PullOff,
        };
    }
}
