using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Sound;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Components.Playing;

/// <summary>What a play line is set to, and the sound that follows from it.</summary>
internal sealed class PlayState(PlayDesk desk, GuitarSound guitar)
{
    private Realization? _played;
    private double _bpm;

    /// <summary>All settings but the tempo, which is the page's.</summary>
    public SoundWishes Wishes { get; private set; } = new() { Guitar = guitar };

    /// <summary>Which share of the page's tempo is heard.</summary>
    public double Speed { get; set; } = 1;

    /// <summary>Bars of the line.</summary>
    public int Bars => _played is null ? 1 : Performer.BarsOf(_played.Line);

    /// <summary>The bars heard.</summary>
    public LoopChoice Loop => new(Wishes.Loops, Wishes.Bars);

    /// <summary>What cannot be heard, if anything; the sound before stays.</summary>
    public Fault? Fault { get; set; }

    /// <summary>The sound; null before there was one.</summary>
    public SoundHandle? Sound { get; private set; }

    /// <summary>Takes over line and tempo of the page.</summary>
    /// <returns>Whether they have changed.</returns>
    public bool Take(Realization played, double bpm)
    {
        if (ReferenceEquals(_played, played) && _bpm.Equals(bpm))
        {
            return false;
        }

        (_played, _bpm) = (played, bpm);
        Choose(Loop.Within(Bars));
        return true;
    }

    /// <summary>Takes other settings.</summary>
    public void Choose(SoundWishes wishes) => Wishes = wishes;

    /// <summary>Takes other bars.</summary>
    public void Choose(LoopChoice loop) => Wishes = Wishes with { Loops = loop.Loops, Bars = loop.Bars };

    /// <summary>Plans the sound anew.</summary>
    /// <returns>Whether there is another one.</returns>
    public bool Plan()
    {
        if (_played is null)
        {
            return false;
        }

        var isMade = desk.Plan(_played, Wishes with { Bpm = _bpm * Speed })
            .TryGet(out var sound, out var fault);
        Sound = sound ?? Sound;
        Fault = fault;
        return isMade;
    }
}
