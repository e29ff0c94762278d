using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>Reads off what a fingered line asks of one fretting hand.</summary>
internal sealed class FretPass(HandTable hand, int mostNotes)
{
    private const int Fingers = 5;
    private readonly int[] _lastNote = new int[Fingers];

    /// <summary>The hand.</summary>
    public HandTable Hand { get; } = hand;

    /// <summary>The state of each note, filled by the solver.</summary>
    public int[] States { get; } = new int[mostNotes];

    /// <summary>Demand of each move, in ms.</summary>
    public double[] Milliseconds { get; } = new double[mostNotes];

    /// <summary>Notes of each finger; open strings first.</summary>
    public int[] Fingered { get; } = new int[Fingers];

    /// <summary>The heaviest window of the hand, its returns and the hands' meeting.</summary>
    public double Heaviest { get; private set; }

    /// <summary>Reads the states of a line.</summary>
    public void Read(ReadOnlySpan<int> line)
    {
        var (fretting, carried, together) = (new LoadWindow(), new LoadWindow(), new LoadWindow());
        Array.Fill(_lastNote, -1);
        Array.Clear(Fingered);
        var width = Hand.Width;
        for (var k = 0; k + 1 < line.Length; k++)
        {
            var (from, to) = (line[k], line[k + 1]);
            var finger = Hand.FingerOf[States[k]];
            Fingered[finger]++;
            _lastNote[finger] = k;
            var pair = Hand.Arcs.Between(from, to);
            var arc = pair + ((States[k] - (from * width)) * width) + States[k + 1] - (to * width);
            Milliseconds[k] = Hand.Milliseconds[arc];
            fretting.Add(Hand.Raised[arc]);
            together.Add(Hand.Together[arc]);
            carried.Add(Return(line, k));
        }

        Fingered[Hand.FingerOf[States[line.Length - 1]]]++;
        Heaviest = Math.Max(fretting.Largest, Math.Max(carried.Largest, together.Largest));
    }

    /// <summary>Rolls, and the most frets that the hand spans without leaving its position.</summary>
    public (int Rolls, int Stretch) Shape(ReadOnlySpan<int> line, Place[] places)
    {
        var (rolls, stretch) = (0, 0);
        var (lowest, highest, position) = (0, 0, 0);
        for (var k = 0; k < line.Length; k++)
        {
            var place = places[line[k]];
            if (place.IsOpen)
            {
                continue;
            }

            var stays = Hand.PositionOf[States[k]] == position;
            position = Hand.PositionOf[States[k]];
            lowest = stays ? Math.Min(lowest, place.Fret) : place.Fret;
            highest = stays ? Math.Max(highest, place.Fret) : place.Fret;
            stretch = Math.Max(stretch, highest - lowest);
            rolls += k > 0 && Rolls(places[line[k - 1]], place, k) ? 1 : 0;
        }

        return (rolls, stretch);
    }

    private bool Rolls(Place before, Place place, int k) =>
        Hand.FingerOf[States[k]] == Hand.FingerOf[States[k - 1]]
        && before.Fret == place.Fret
        && Math.Abs(before.String - place.String) == 1;

    // The raised load of the finger that plays next, where it comes back from another place over other notes.
    private double Return(ReadOnlySpan<int> line, int k)
    {
        var finger = Hand.FingerOf[States[k + 1]];
        var last = _lastNote[finger];
        if (finger == 0 || last < 0 || last == k || line[last] == line[k + 1])
        {
            return 0;
        }

        var at = (((finger * Hand.Places) + line[last]) * Hand.Places) + line[k + 1];
        return Hand.Returns[at] * Hand.Pulse.Over(k + 1 - last);
    }
}
