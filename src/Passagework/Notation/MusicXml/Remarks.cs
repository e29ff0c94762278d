using System.Collections.Immutable;

namespace Passagework.Notation;

/// <summary>Collects what could not be taken over, each kind once, with bounded memory.</summary>
internal sealed class Remarks
{
    private const int MostKinds = 100;
    private const string More = "other signs and texts";
    private readonly Dictionary<string, (string FirstAt, int Count)> _seen = [];
    private readonly List<string> _order = [];

    /// <summary>Counts a text that has been seen before, for which no place is needed; false when it has not.</summary>
    public bool Repeats(string text)
    {
        if (!_seen.TryGetValue(text, out var before))
        {
            return false;
        }

        _seen[text] = before with { Count = before.Count + 1 };
        return true;
    }

    public void Add(string text, string spot)
    {
        if (!_seen.ContainsKey(text) && _order.Count >= MostKinds)
        {
            text = More;
        }

        if (!Repeats(text))
        {
            _order.Add(text);
            _seen[text] = (spot, 1);
        }
    }

    public ImmutableArray<MusicXmlRemark> All() =>
        [.. _order.Select(text => new MusicXmlRemark(text, _seen[text].FirstAt, _seen[text].Count))];
}
