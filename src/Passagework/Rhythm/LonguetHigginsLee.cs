namespace Passagework.Rhythm;

/// <summary>What the measure found: rests that are no weaker than the note that sounds into them, and by how much.</summary>
/// <param name="Pairs">Pairs of a note and such a rest; 0 where there is no syncopation.</param>
/// <param name="Total">The sum of their differences of weight.</param>
public readonly record struct SyncopationSum(int Pairs, int Total);

/// <summary>Syncopation as a weak note held through a stronger place.</summary>
/// <remarks>
/// H. C. Longuet-Higgins and C. S. Lee, The rhythmic interpretation of monophonic music, Music Perception 1, 1984. The
/// bar is split down its tree: a silent span is one rest, a span with an onset only at its start is one note, anything
/// else is split again. Each rest pairs with the nearest note before it, also from the bar before; the pair counts when
/// the rest is not weaker, with the difference of weight.
/// </remarks>
public static class LonguetHigginsLee
{
    /// <summary>The sum over the cycle; null where the cycle is no whole number of bars of that tree.</summary>
    public static SyncopationSum? Of(OnsetPattern pattern, MetricalTree bar)
    {
        if (pattern.Pulses % bar.Pulses != 0)
        {
            return null;
        }

        var isStruck = new bool[pattern.Pulses];
        foreach (var onset in pattern.Onsets)
        {
            isStruck[onset] = true;
        }

        var nodes = new List<Node>();
        for (var start = 0; start < pattern.Pulses; start += bar.Pulses)
        {
            Split(isStruck.AsSpan(start, bar.Pulses), 0, 0, bar, nodes);
        }

        return Sum(nodes);
    }

    // Depth 0 is the bar; a span's first pulse has the weight of the bar's pulse at first.
    private static void Split(
        ReadOnlySpan<bool> span,
        int depth,
        int first,
        MetricalTree bar,
        List<Node> nodes
    )
    {
        var silentAfterStart = !span[1..].Contains(true);
        if (silentAfterStart)
        {
            nodes.Add(new Node(span[0], bar.Weights[first]));
            return;
        }

        var length = span.Length / bar.Divisions[depth];
        for (var part = 0; part < span.Length; part += length)
        {
            Split(span.Slice(part, length), depth + 1, first + part, bar, nodes);
        }
    }

    private static SyncopationSum Sum(List<Node> nodes)
    {
        var (pairs, total) = (0, 0);
        var note = nodes.FindLast(node => node.IsNote);
        foreach (var node in nodes)
        {
            if (node.IsNote)
            {
                note = node;
            }
            else if (node.Weight >= note.Weight)
            {
                pairs++;
                total += node.Weight - note.Weight;
            }
        }

        return new SyncopationSum(pairs, total);
    }

    private readonly record struct Node(bool IsNote, int Weight);
}
