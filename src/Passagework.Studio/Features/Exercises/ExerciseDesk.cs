using Passagework.Engraving.Screens;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Studio.Features.Exercises;

/// <summary>One exercise lying open before one user: the idea, what it asks, how it is drawn, what is wrong.</summary>
/// <remarks>Every change is kept at once. What cannot be leaves everything as it was and says so.</remarks>
internal sealed class ExerciseDesk(
    OpenExercise open,
    ChangeExercise change,
    UndoExercise undo,
    TimeProvider time
)
{
    private const double UsualWidthPx = 1312;
    private const string Unkept = "what could not be kept";
    private readonly HeldControl<Stepped> _held = new(time);
    private OpenedExercise? _kept;
    private Func<Task>? _again;

    /// <summary>The exercise; null before it is opened.</summary>
    public OpenedExercise? Exercise { get; private set; }

    /// <summary>What it asks of the player.</summary>
    public Measurement? Measured { get; private set; }

    /// <summary>As it is drawn.</summary>
    public ScreenScore? Score { get; private set; }

    /// <summary>For whom.</summary>
    public Player Player { get; private set; } = Player.At(2);

    /// <summary>How the room calls things.</summary>
    public RoomStyle Style { get; private set; }

    /// <summary>Felt beats a minute at which it is looked at and heard.</summary>
    public double Bpm { get; private set; } = 60;

    /// <summary>Index of the note that is explained.</summary>
    public int Chosen { get; private set; }

    /// <summary>Room for the score in pixels.</summary>
    public double WidthPx { get; private set; } = UsualWidthPx;

    /// <summary>Whether the score is larger, for a projector.</summary>
    public bool IsLarge { get; private set; }

    /// <summary>What cannot be; its place is the key of a control.</summary>
    public Fault? Problem { get; private set; }

    /// <summary>Why the last change is shown but not kept.</summary>
    public Fault? NotKept { get; private set; }

    /// <summary>The exercise as another page has left it, when it was changed there.</summary>
    public OpenedExercise? Elsewhere { get; private set; }

    private (ExerciseKey Key, int Version) State => (Exercise!.Key, Exercise.Version);

    /// <summary>Raised when an exercise of the library has become an own one, with its new address.</summary>
    public event EventHandler<MovedEventArgs>? Moved;

    /// <summary>The idea that is shown.</summary>
    public Recipe Recipe => Exercise!.Recipe;

    private bool ShowsUnkept => NotKept is not null && Recipe != _kept!.Recipe;

    /// <summary>Opens an exercise for a player.</summary>
    /// <returns>Why there is none; null when it lies open.</returns>
    public async Task<Fault?> Open(ExerciseKey key, Player player, RoomStyle style = default)
    {
        (Player, Style) = (player, style);
        if (!(await open.Open(key)).TryGet(out var exercise, out var fault))
        {
            return fault;
        }

        if (Measurer.Measure(exercise.Recipe, player).TryGet(out var measured, out _))
            (Bpm, Chosen) = (measured.StartBpm, LimitingMove.Of(measured)?.Note ?? 0);

        _kept = exercise;
        Show(exercise, measured);
        return null;
    }

    /// <summary>Sets one axis of the idea.</summary>
    public Task Set(string axis, string value) =>
        Change(axis, recipe => IdeaChange.Set(recipe, axis, value, Style));

    /// <summary>Sets one axis of the idea to what was typed.</summary>
    public Task Type(string axis, string typed) =>
        Change(axis, recipe => IdeaChange.Type(recipe, axis, typed, Style));

    /// <summary>Steps one axis of the idea.</summary>
    public Task Step(string axis, int steps) =>
        Change(axis, recipe => IdeaChange.Step(recipe, axis, steps, Style));

    /// <summary>Takes another idea in place of this one, such as a harder form of it.</summary>
    public Task Take(Recipe recipe, string what) => Apply("", recipe, what);

    /// <summary>Fixes something about a note.</summary>
    public Task Lock(Lock part, string what) =>
        NoteLocks.Set(Recipe, part).TryGet(out var locked, out var fault)
            ? Apply("score", locked, what)
            : Refuse(fault with { Where = "score" });

    /// <summary>Frees a note.</summary>
    public Task Unlock(int note, string what) => Apply("score", NoteLocks.Clear(Recipe, note), what);

    /// <summary>Takes the last change back; one that is only shown goes back to what is kept.</summary>
    public async Task Undo()
    {
        if (ShowsUnkept)
            Answer(new ChangeAnswer.Kept(_kept!), _kept!.Recipe);
        else
            await Keep(before => undo.Undo(before), Recipe);
    }

    /// <summary>Makes a change again that was taken back.</summary>
    public Task Redo() => ShowsUnkept ? TryAgain() : Keep(before => undo.Redo(before), Recipe);

    /// <summary>Tries again what could not be kept.</summary>
    public Task TryAgain() => _again?.Invoke() ?? Task.CompletedTask;

    /// <summary>Keeps something beside the idea: remarks, a place on the shelf, a copy. What waits to be kept goes first.</summary>
    /// <param name="act">Keeps it.</param>
    /// <param name="then">Goes on from what is kept.</param>
    public async Task KeepBeside(Func<OpenedExercise, Task<ChangeAnswer>> act, Action<OpenedExercise> then)
    {
        await TryAgain();
        if (NotKept is not null || Elsewhere is not null)
        {
            return;
        }

        switch (await act(Exercise!))
        {
            case ChangeAnswer.Kept kept:
                then(kept.Exercise);
                break;
            case ChangeAnswer.ChangedElsewhere elsewhere:
                Elsewhere = elsewhere.Theirs;
                break;
            case ChangeAnswer.Failed failed:
                NotKept = failed.Fault;
                _again = async () =>
                {
                    (NotKept, _again) = (null, null);
                    await KeepBeside(act, then);
                };
                break;
        }
    }

    /// <summary>Shows the exercise as another page left it.</summary>
    public void ShowElsewhere()
    {
        if (Elsewhere is { } theirs)
            Answer(new ChangeAnswer.Kept(theirs), theirs.Recipe);
    }

    /// <summary>Makes what is shown an exercise beside the one that was changed elsewhere.</summary>
    public async Task KeepBoth()
    {
        var mine = Recipe with { Id = null, Title = $"{Exercise!.Title}, other version" };
        await Keep(_ => change.Begin(mine, Exercise.Key.Text), mine);
    }

    /// <summary>Explains another note.</summary>
    public void Choose(int note)
    {
        Chosen = Math.Clamp(note, 0, Math.Max(0, (Measured?.Realization.Notes.Length ?? 1) - 1));
        Draw();
    }

    /// <summary>Looks at another tempo.</summary>
    public void SetBpm(double bpm)
    {
        Bpm = Math.Clamp(bpm, 10, 1000);
        Draw();
    }

    /// <summary>Measures for another player; a tempo that nobody has set is that player's.</summary>
    public void SetPlayer(Player player)
    {
        Player = player;
        if (Measurer.Measure(Recipe, player).TryGet(out var measured, out var fault))
        {
            if (Bpm == Measured?.StartBpm)
                Bpm = measured.StartBpm;

            Measured = measured;
            Problem = null;
            Draw();
        }
        else
        {
            Problem = fault with { Where = "player" };
        }
    }

    /// <summary>Draws for another width.</summary>
    public void SetWidth(double widthPx)
    {
        var width = Math.Clamp(Math.Floor(widthPx), 280, 4000);
        if (width == WidthPx)
        {
            return;
        }

        WidthPx = width;
        Draw();
    }

    /// <summary>Draws larger or in the usual size.</summary>
    public void SetLarge(bool isLarge)
    {
        IsLarge = isLarge;
        Draw();
    }

    /// <summary>Takes over an exercise of which something beside the idea was changed.</summary>
    public void Refresh(OpenedExercise exercise)
    {
        var isMoved = Exercise?.Key != exercise.Key;
        Exercise = _kept = exercise;
        if (isMoved)
            Moved?.Invoke(this, new MovedEventArgs(exercise.Key));
    }

    private async Task Change(string axis, Func<Recipe, Outcome<Recipe>> next)
    {
        if (!next(Recipe).TryGet(out var recipe, out var fault))
        {
            await Refuse(fault with { Where = axis });
            return;
        }

        var state = State;
        var held = _held.Last(axis) is { } step && step.Led == state ? step.From : null;
        var first = held ?? Recipe;
        await Apply(axis, recipe, ChangeWords.Of((first, recipe), axis, Style), goesOn: held is not null);
        if (State != state && recipe != first)
            _held.Moved(axis, new Stepped(first, State));
    }

    private async Task Apply(string axis, Recipe recipe, string what, bool goesOn = false)
    {
        if (recipe == Recipe)
        {
            Problem = null;
            return;
        }

        if (!Measurer.Measure(recipe, Player).TryGet(out var measured, out var fault))
        {
            await Refuse(fault with { Where = axis });
            return;
        }

        var words = ShowsUnkept ? Unkept : what;
        await Keep(
            before => goesOn ? change.GoOn(before, recipe, words) : change.Change(before, recipe, words),
            recipe,
            measured
        );
    }

    // From what is kept, not from what is only shown: a library exercise becomes an own one that began as the library has it.
    private async Task Keep(
        Func<OpenedExercise, Task<ChangeAnswer>> act,
        Recipe shown,
        Measurement? measured = null
    )
    {
        var answer = await act(_kept!);
        Answer(answer, shown, measured);
        _again = answer is ChangeAnswer.Failed ? () => Keep(act, shown, measured) : null;
    }

    private Task Refuse(Fault fault)
    {
        Problem = fault;
        return Task.CompletedTask;
    }

    // What was measured before it was kept need not be measured again.
    private void Answer(ChangeAnswer answer, Recipe shown, Measurement? measured = null)
    {
        (Problem, NotKept, Elsewhere, _again) = (null, null, null, null);
        switch (answer)
        {
            case ChangeAnswer.Kept kept:
                _kept = kept.Exercise;
                var isMoved = kept.Exercise.Key != Exercise!.Key;
                Show(kept.Exercise, kept.Exercise.Recipe == shown ? measured : null);
                if (isMoved)
                    Moved?.Invoke(this, new MovedEventArgs(kept.Exercise.Key));
                break;
            case ChangeAnswer.ChangedElsewhere elsewhere:
                Show(Exercise! with { Recipe = shown }, measured);
                Elsewhere = elsewhere.Theirs;
                break;
            case ChangeAnswer.Failed failed:
                Show(Exercise! with { Recipe = shown }, measured);
                NotKept = failed.Fault;
                break;
        }
    }

    private void Show(OpenedExercise exercise, Measurement? measured = null)
    {
        Exercise = exercise;
        (Problem, Elsewhere) = (null, null);
        if (
            measured is null
            && !Measurer.Measure(exercise.Recipe, Player).TryGet(out measured, out var fault)
        )
        {
            Problem = fault;
            return;
        }

        Measured = measured;
        Chosen = Math.Min(Chosen, measured.Realization.Notes.Length - 1);
        Draw();
    }

    private void Draw()
    {
        if (Measured is null)
        {
            return;
        }

        var options = new ScreenOptions
        {
            WidthPx = WidthPx,
            SpacePx = IsLarge ? ScreenOptions.LargerSpacePx : ScreenOptions.UsualSpacePx,
            TempoBpm = Bpm,
            Chosen = Chosen,
            Style = Style,
        };
        if (ScreenScore.Draw(Measured, options).TryGet(out var score, out var fault))
            Score = score;
        else
            Problem = fault;
    }

    // A step, or several of one control that are one: the idea before, and the state that is kept since.
    private sealed record Stepped(Recipe From, (ExerciseKey Key, int Version) Led);
}

/// <summary>An exercise has another address.</summary>
/// <param name="key">The new one.</param>
internal sealed class MovedEventArgs(ExerciseKey key) : EventArgs
{
    /// <summary>The new one.</summary>
    public ExerciseKey Key { get; } = key;
}
