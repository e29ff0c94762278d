using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>
/// The fingering of a line as a chain of layers: minimise Σ (τ/A)⁴ (IOIref/IOI)⁴ + 0.02 Σ |deviation|, ties by
/// fewer shifts, less deviation, lower finger, lower position.
/// </summary>
internal sealed class FretProblem
{
    private const long OneShift = 1L << 44;
    private const long OneFret = 1L << 28;
    private const double UnitsPerMs = 10;
    private readonly Line _line;
    private readonly FretLayers _layers;
    private readonly MoveTable _table;
    private readonly double[] _basis;
    private readonly double _press;
    private readonly Articulation _articulation;
    private readonly Dictionary<(int From, int To, Wish Wish), LayeredStep> _steps = [];

    public FretProblem(Line line, Player player, FretLayers layers)
    {
        _line = line;
        _layers = layers;
        _basis = player.Parameters.Basis;
        _press = _basis[Basis.Press];
        _table = new MoveTable(
            new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize),
            _basis
        );
        var times = new LineTimes(line);
        _articulation = new Articulation(line, times);
        Layered = Build(times);
    }

    /// <summary>The problem for the solver.</summary>
    public LayeredProblem Layered { get; }

    /// <summary>The fingering that a way through the layers stands for.</summary>
    public Fingering FingeringOf(LayeredPath path) =>
        new(
            [
                .. path.States.Select(
                    (state, note) =>
                    {
                        var chosen = _layers.States(_layers.LayerOfNote[note])[state];
                        return FingeredNote.Of(chosen);
                    }
                ),
            ],
            path.Cost
        );

    /// <summary>The fault that names the first two notes which no hand can play one after the other.</summary>
    public Fault BrokenPair()
    {
        var note =
            LayeredSolver.FirstBroken(Layered)
            ?? throw new System.Diagnostics.UnreachableException(
                "A problem without a way has a broken pair."
            );
        var (one, two) = (_line.Notes[note], _line.Notes[note + 1]);
        return new Fault(
            $"no hand can play note {one.Index} ({Name(one)}) and then note {two.Index} ({Name(two)})",
            LinePlace.Of(_line, note + 1),
            "move one of them, free a lock or allow another finger"
        );
    }

    private static string Name(LineNote note) => note.Place?.ToString() ?? note.Pitch.ToString();

    private LayeredProblem Build(LineTimes times)
    {
        var count = _line.Notes.Length;
        var first = _layers.States(_layers.LayerOfNote[0]);
        var extras = new double[_layers.Count][];
        for (var layer = 0; layer < extras.Length; layer++)
        {
            extras[layer] = Array.ConvertAll(_layers.States(layer), Preference);
        }

        var reference = LineTimes.Median(times.Gaps);
        var steps = new LayeredStep[count - 1];
        var weights = new double[count - 1];
        var perStep = new double[count - 1][];
        for (var k = 0; k < steps.Length; k++)
        {
            steps[k] = StepInto(k + 1);
            weights[k] = HandConstants.Cost(reference / times.Gaps[k]);
            perStep[k] = extras[_layers.LayerOfNote[k + 1]];
        }

        return new LayeredProblem(
            extras[_layers.LayerOfNote[0]],
            Array.ConvertAll(first, TieOf),
            steps,
            weights,
            perStep
        );
    }

    private static double Preference(FretState state) => HandConstants.DeviationWeight * state.Strain;

    // Fewer shifts before less deviation before less effort of forms; wide enough for the longest line.
    private long TieOf(FretState state) =>
        (state.Strain * OneFret) + (long)((state.Form?.EffortMs(_basis) ?? 0) * UnitsPerMs);

    // Steps between the same two layers are equal unless slurs make them differ.
    private LayeredStep StepInto(int note)
    {
        var (from, to) = (_layers.LayerOfNote[note - 1], _layers.LayerOfNote[note]);
        var wish = _articulation.WishOf(note);
        if (!_steps.TryGetValue((from, to, wish), out var step))
        {
            step = Arcs(wish, _layers.States(from), _layers.States(to));
            _steps[(from, to, wish)] = step;
        }

        return step;
    }

    private LayeredStep Arcs(Wish wish, FretState[] from, FretState[] to)
    {
        var costs = _table.Between(from, to, (start, end) => _articulation.Of(wish, start, end));
        var ties = new long[costs.Length];
        for (var i = 0; i < from.Length; i++)
        {
            for (var j = 0; j < to.Length; j++)
            {
                var arc = (i * to.Length) + j;
                costs[arc] = HandConstants.Cost(costs[arc] / _press);
                ties[arc] = (from[i].Position == to[j].Position ? 0 : OneShift) + TieOf(to[j]);
            }
        }

        return new LayeredStep(from.Length, to.Length, costs, ties);
    }
}
