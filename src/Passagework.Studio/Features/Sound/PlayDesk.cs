using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Sound;

/// <summary>What one page plays: every change of exercise or wishes gives a new sound, the levels stay.</summary>
internal sealed class PlayDesk(SoundPlanner planner, SoundStore store) : IDisposable
{
    /// <summary>
    /// Sounds of the page that stay. The one that is heard asks for samples two or three times a second; meanwhile a key that
    /// is held down may ask for a dozen others.
    /// </summary>
    public const int Kept = 16;

    private readonly KeptLevels _levels = new();
    private readonly List<string> _names = [];
    private Realization? _before;
    private int _music;

    /// <summary>Plans a sound and keeps it to be fetched; refused where a wish cannot be met, and the sound before stays.</summary>
    public Outcome<SoundHandle> Plan(Realization played, SoundWishes wishes) =>
        planner
            .Plan(played, wishes, _levels)
            .Then<SoundHandle>(sound =>
            {
                var name = store.Add(sound);
                _names.Add(name);
                store.Keep(_names, Kept);
                if (_before?.Notes.SequenceEqual(played.Notes) != true)
                {
                    _music++;
                }

                _before = played;
                return HandleOf(name, sound, (played, wishes));
            });

    /// <inheritdoc/>
    public void Dispose()
    {
        foreach (var name in _names)
        {
            store.Remove(name);
        }
    }

    private SoundHandle HandleOf(
        string name,
        PlayedSound sound,
        (Realization Played, SoundWishes Wishes) asked
    )
    {
        var (played, bars) = (asked.Played, asked.Wishes.Bars);
        return new SoundHandle
        {
            Id = name,
            SampleRate = SoundPlanner.SampleRate,
            Samples = sound.Samples,
            RepeatFrom = sound.Repeated?.From,
            RepeatTo = sound.Repeated?.To,
            NoteBars = [.. played.Notes.Select(note => BarOf(note.Note, played.Line))],
            NotePlaces =
            [
                .. played.Notes.Select(note => note.Tones.Select(tone => tone.Place.ToString()).ToArray()),
            ],
            FirstBar = bars?.First,
            LastBar = bars?.First + bars?.Count - 1,
            Music = _music,
        };
    }

    private static int BarOf(LineNote note, Line line) =>
        (int)(note.Onset / line.Recipe.Rhythm.Meter.Bar).Floor();
}
