using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>A note before it is spelled and numbered.</summary>
internal sealed record DraftNote
{
    public Place? Place { get; init; }

    /// <summary>The pitch as the recipe wrote it, where it wrote no place.</summary>
    public SpelledPitch? Pitch { get; init; }

    /// <summary>The further tones of a chord, from high to low, not yet spelled.</summary>
    public ImmutableArray<WrittenTone> With { get; init; } = [];

    /// <summary>Index on the path; null for a written line.</summary>
    public int? PathIndex { get; init; }

    public int? Group { get; init; }

    public int? InGroup { get; init; }

    public bool Accent { get; init; }

    public Slur Slur { get; init; }

    public Fraction Onset { get; init; }

    public Fraction Duration { get; init; }
}

/// <summary>A line while it is being written, one entry after the other.</summary>
internal sealed class Draft(Fraction start)
{
    public List<DraftNote> Notes { get; } = [];

    public List<Rest> Rests { get; } = [];

    /// <summary>Where the next entry begins.</summary>
    public Fraction End { get; private set; } = start;

    public void Add(DraftNote note, Fraction duration)
    {
        Notes.Add(note with { Onset = End, Duration = duration });
        End += duration;
    }

    public void AddRest(Fraction duration)
    {
        if (Rests.Count > 0 && Rests[^1] is var last && last.Onset + last.Duration == End)
        {
            Rests[^1] = last with { Duration = last.Duration + duration };
        }
        else
        {
            Rests.Add(new Rest(End, duration));
        }

        End += duration;
    }

    /// <summary>Lets the last note sound until a time, in place of the silence after it.</summary>
    public void HoldLast(Fraction until)
    {
        var note = Notes[^1];
        Notes[^1] = note with { Duration = until - note.Onset };
        if (Rests.Count > 0 && Rests[^1] is var rest && rest.Onset > note.Onset)
        {
            var restEnd = rest.Onset + rest.Duration;
            Rests.RemoveAt(Rests.Count - 1);
            if (restEnd > until)
            {
                Rests.Add(new Rest(until, restEnd - until));
            }
        }

        End = End > until ? End : until;
    }
}
