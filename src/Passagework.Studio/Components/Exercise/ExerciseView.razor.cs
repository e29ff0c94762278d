using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Studio.Components.Controls;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Studio.Components.Exercise;

/// <summary>Binds the page to the desk on which the exercise lies.</summary>
public sealed partial class ExerciseView : IAsyncDisposable
{
    private IJSObjectReference? _script;
    private DotNetObjectReference<ExerciseView>? _self;
    private bool _isAttached;
    private bool _showsOthers;
    private bool _isComparing;
    private StudioSettings _settings = new();

    /// <summary>Library id or number of an own exercise.</summary>
    [Parameter]
    public string Key { get; set; } = "";

    [Inject]
    private ExerciseDesk Desk { get; set; } = null!;

    [Inject]
    private ReadSettings Settings { get; set; } = null!;

    [Inject]
    private KeepExercise Keeping { get; set; } = null!;

    [Inject]
    private CopyExercise Copying { get; set; } = null!;

    [Inject]
    private AnnotateExercise Annotating { get; set; } = null!;

    [Inject]
    private NavigationManager Navigation { get; set; } = null!;

    [Inject]
    private IJSRuntime Browser { get; set; } = null!;

    [Inject]
    private IHttpContextAccessor Http { get; set; } = null!;

    private Fault? ProblemAtScore =>
        Desk.Problem is { Where: "score" or "" or "player" } fault ? fault : null;

    /// <summary>The pointer chose a note.</summary>
    [JSInvokable]
    public void ChooseNote(int note)
    {
        Desk.Choose(note);
        StateHasChanged();
    }

    /// <summary>A key was pressed on the score.</summary>
    [JSInvokable]
    public async Task ScoreKey(string key)
    {
        switch (key)
        {
            case "before":
                Desk.Choose(Desk.Chosen - 1);
                break;
            case "after":
                Desk.Choose(Desk.Chosen + 1);
                break;
            case "first":
                Desk.Choose(0);
                break;
            case "last":
                Desk.Choose(int.MaxValue);
                break;
            case "others":
                _showsOthers = !_showsOthers;
                break;
            default:
                await LockShown(key);
                break;
        }

        StateHasChanged();
    }

    /// <summary>A value was stepped by a key.</summary>
    [JSInvokable("Step")]
    public async Task StepByKey(string axis, int steps)
    {
        await Desk.Step(axis, steps);
        StateHasChanged();
    }

    /// <summary>The key for undoing.</summary>
    [JSInvokable]
    public async Task UndoKey()
    {
        await Desk.Undo();
        StateHasChanged();
    }

    /// <summary>The key for doing again.</summary>
    [JSInvokable]
    public async Task RedoKey()
    {
        await Desk.Redo();
        StateHasChanged();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        Desk.Moved -= Move;
        try
        {
            if (_script is not null)
            {
                await _script.InvokeVoidAsync("detach");
                await _script.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page has gone before us.
        }

        _self?.Dispose();
    }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        Desk.Moved += Move;
        if (RoomWidth.Remembered(Http.HttpContext) is { } width)
            Desk.SetWidth(width);

        _settings = await Settings.Read();
        await Desk.Open(new ExerciseKey(Key), _settings.Player, _settings.Style);
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender)
        {
            _script = await Browser.InvokeAsync<IJSObjectReference>("import", "/exercise.js");
            _self = DotNetObjectReference.Create(this);
            await _script.InvokeVoidAsync("attach", _self);
            // A change may have been quicker than the script.
            if (Desk.Exercise is { } exercise && exercise.Key.Text != Key)
                await _script.InvokeVoidAsync("moveTo", exercise.Key.Url);

            _isAttached = true;
            StateHasChanged();
        }
    }

    private string SheetUrl(OpenedExercise exercise) =>
        FormattableString.Invariant(
            $"{exercise.Key.Url}/file/sheet.svg?bpm={Desk.Bpm:0.#}&show=1&v={exercise.Version}"
        );

    private Task Set((string Axis, string Value) asked) => Desk.Set(asked.Axis, asked.Value);

    private Task Type((string Axis, string Value) typed) => Desk.Type(typed.Axis, typed.Value);

    private Task Step((string Axis, int Steps) asked) => Desk.Step(asked.Axis, asked.Steps);

    private Task Take((Recipe Recipe, string What) asked) => Desk.Take(asked.Recipe, asked.What);

    private Task SetTitle(string title) => Desk.Take(Desk.Recipe with { Title = title }, $"title to {title}");

    private Task Undo() => Desk.Undo();

    private Task Redo() => Desk.Redo();

    private Task TryAgain() => Desk.TryAgain();

    private Task KeepBoth() => Desk.KeepBoth();

    private void ShowElsewhere() => Desk.ShowElsewhere();

    private void SetBpm(double bpm) => Desk.SetBpm(bpm);

    private void SetLarge(bool isLarge) => Desk.SetLarge(isLarge);

    private void SetLevel(double level) => Desk.SetPlayer(Desk.Player.MovedTo(level));

    private Task Lock((Lock Part, string What) asked) => Desk.Lock(asked.Part, asked.What);

    private Task Unlock(int note) => Desk.Unlock(note, $"note {note + 1} free again");

    private async Task LockShown(string what)
    {
        var note = Desk.Measured?.Realization.Notes[Desk.Chosen];
        if (note is not null && NoteLock.Of(note, Desk.Chosen, what) is { } part)
        {
            await Desk.Lock(part, $"{what} of note {Desk.Chosen + 1} fixed");
        }
    }

    private Task Keep() => Desk.KeepBeside(exercise => Keeping.Keep(exercise), Desk.Refresh);

    private Task Annotate((string Notes, IEnumerable<string> Labels) asked) =>
        Desk.KeepBeside(exercise => Annotating.Annotate(exercise, asked.Notes, asked.Labels), Desk.Refresh);

    private Task Copy() =>
        Desk.KeepBeside(
            exercise => Copying.Copy(exercise, exercise.Recipe),
            copy => Navigation.NavigateTo(copy.Key.Url, forceLoad: true)
        );

    // The address follows without a new page, so that a reload opens what is shown.
    private void Move(object? sender, MovedEventArgs moved)
    {
        if (_script is not null)
            _ = _script.InvokeVoidAsync("moveTo", moved.Key.Url).AsTask();
    }
}
