using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Ends a line: holds its last note, or adds notes up to a root.</summary>
internal sealed class LineEnding(Recipe recipe, PathRange range, Draft draft)
{
    private readonly Fraction _bar = recipe.Rhythm.Meter.Bar;

    /// <summary>Adds the recipe's ending; a fault where the path has no root to end on.</summary>
    public Fault? Add()
    {
        var ending = recipe.Movement.Ending;
        if (ending == Ending.None)
        {
            return null;
        }

        var last = draft.Notes[^1];
        if (ending == Ending.HoldLast)
        {
            draft.HoldLast(BarLineFrom(last.Onset + last.Duration));
            return null;
        }

        if (last.PathIndex is not { } from || NearestRoot(from) is not { } root)
        {
            return new Fault(
                "the part of the layout that is used has no root to end on",
                "$.movement.ending",
                "the ending 'none' or 'hold-last', or a layout with a root"
            );
        }

        if (ending == Ending.HoldRoot)
        {
            AddNote(root, NextBarLine - draft.End);
        }
        else
        {
            FillBar(from, root);
        }

        return null;
    }

    private bool IsOnBarLine => draft.End.Modulo(_bar) == Fraction.Zero;

    private Fraction NextBarLine => draft.End - draft.End.Modulo(_bar) + _bar;

    private Fraction BarLineFrom(Fraction time) =>
        time.Modulo(_bar) == Fraction.Zero ? time : time - time.Modulo(_bar) + _bar;

    /// <summary>Goes towards the root, a path step and a pulse at a time; a bar line ends it wherever it has come.</summary>
    private void FillBar(int from, int root)
    {
        if (IsOnBarLine)
        {
            return;
        }

        if (from == root)
        {
            draft.HoldLast(NextBarLine);
            return;
        }

        var pulse = recipe.Rhythm.Pulse;
        for (var index = from; index != root && !IsOnBarLine; )
        {
            index += Math.Sign(root - index);
            var left = NextBarLine - draft.End;
            AddNote(index, index == root || pulse > left ? left : pulse);
        }
    }

    private void AddNote(int index, Fraction duration) =>
        draft.Add(new DraftNote { Place = range.PlaceAt(index), PathIndex = index }, duration);

    private int? NearestRoot(int from) =>
        range
            .Indices.Where(IsRoot)
            .OrderBy(index => Math.Abs(index - from))
            .ThenBy(index => recipe.Instrument.MidiAt(range.PlaceAt(index)))
            .Select(index => (int?)index)
            .FirstOrDefault();

    private bool IsRoot(int index)
    {
        // As if the capo were the nut, like everything that is laid out.
        var key = recipe.Instrument.MidiAt(range.PlaceAt(index)) - recipe.Instrument.Capo;
        return recipe.Notes is { } notes && (key - notes.Root.PitchClass) % 12 == 0;
    }
}
