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
    private readonly Line _line;
    private readonly FretLayers _layers;
    private readonly FretCosts _costs;
    private readonly Articulation _articulation;
    private readonly Dictionary<(int From, int To, Wish Wish), LayeredStep> _steps = [];

    public FretProblem(Line line, Player player, FretLayers layers)
    {
        _line = line;
        _layers = layers;
        _costs = new FretCosts(
            new FrettingMoves(Geometry.Of(line.Recipe.Instrument), player.HandSize),
            player.Parameters.Basis
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
            extras[layer] = Array.ConvertAll(_layers.States(layer), FretCosts.Preference);
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
            Array.ConvertAll(first, _costs.TieOf),
            steps,
            weights,
            perStep
        );
    }

    // Steps between the same two layers are equal unless slurs make them differ.
    private LayeredStep StepInto(int note)
    {
        var (from, to) = (_layers.LayerOfNote[note - 1], _layers.LayerOfNote[note]);
        var wish = _articulation.WishOf(note);
        if (!_steps.TryGetValue((from, to, wish), out var step))
        {
            step = _costs.Between(
                _layers.States(from),
                _layers.States(to),
                (start, end) => _articulation.Of(wish, start, end)
            );
            _steps[(from, to, wish)] = step;
        }

        return step;
    }
}
