using Microsoft.AspNetCore.Components;
using Passagework.Foundation;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Components.Playing;

/// <summary>Hears the exercise of a page.</summary>
public sealed partial class PlayLine : ComponentBase
{
    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        _state = new PlayState(Desk, Settings.Guitar);
        _script = new PlayScript(Scripts)
        {
            Renewing = () => Done(() => _state.Plan() ? _state.Sound : null),
            Dragged = (first, last) => InvokeAsync(() => Loop(LoopChoice.Between(first, last))),
            EdgeSet = (isStart, bar) =>
                InvokeAsync(() => Loop(_state.Loop.WithEnd(bar, isStart, _state.Bars))),
            Begun = () => Done(() => _wasHeard = true),
            Troubled = kind => Done(() => _state.Fault = PlayTroubles.Of(kind)),
        };
    }

    /// <inheritdoc/>
    protected override async Task OnParametersSetAsync()
    {
        if (_state.Take(Measured.Realization, Bpm) && RendererInfo.IsInteractive)
            await Plan();
    }

    /// <inheritdoc/>
    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!firstRender)
        {
            return;
        }

        await _script.Attach(_section);
        if (_state.Sound is { } sound)
            await _script.Set(sound);
        _isReady = true;
        StateHasChanged();
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync() => _script.DisposeAsync();

    private Task Choose(SoundWishes wishes)
    {
        _state.Choose(wishes);
        return Plan();
    }

    private Task Loop(LoopChoice loop)
    {
        _state.Choose(loop);
        return Plan();
    }

    private Task Slow(double speed)
    {
        _state.Speed = speed;
        return Plan();
    }

    private async Task Typed(Outcome<double> typed)
    {
        if (typed.TryGet(out var bpm, out var fault))
            await BpmChanged.InvokeAsync(bpm);
        _state.Fault = fault;
    }

    private async Task Plan()
    {
        if (_state.Plan())
            await _script.Set(_state.Sound!);
        StateHasChanged();
    }

    private async Task<T> Done<T>(Func<T> change)
    {
        T result = default!;
        await InvokeAsync(() =>
        {
            result = change();
            StateHasChanged();
        });
        return result;
    }
}
