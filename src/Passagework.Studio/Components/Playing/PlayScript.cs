using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;
using Passagework.Studio.Features.Sound;

namespace Passagework.Studio.Components.Playing;

/// <summary>The part of a play line that runs in the browser, and what it asks for.</summary>
internal sealed class PlayScript(IJSRuntime scripts) : IAsyncDisposable
{
    private readonly TaskCompletionSource<IJSObjectReference> _attached = new();
    private DotNetObjectReference<PlayScript>? _self;

    /// <summary>Is asked for the sound anew, when the studio has forgotten it.</summary>
    public required Func<Task<SoundHandle?>> Renewing { get; init; }

    /// <summary>Is told the first and last bar, from 0, that were dragged over.</summary>
    public required Func<int, int, Task> Dragged { get; init; }

    /// <summary>Is told where the loop is to begin (true) or end, in bars from 0.</summary>
    public required Func<bool, int, Task> EdgeSet { get; init; }

    /// <summary>Is told that something is heard.</summary>
    public required Func<Task> Begun { get; init; }

    /// <summary>Is told a kind of trouble: no-audio or lost.</summary>
    public required Func<string, Task> Troubled { get; init; }

    /// <summary>Makes the play line play.</summary>
    public async Task Attach(ElementReference section)
    {
        _self = DotNetObjectReference.Create(this);
        await using var module = await scripts.InvokeAsync<IJSObjectReference>("import", "./play.js");
        _attached.SetResult(await module.InvokeAsync<IJSObjectReference>("attach", section, _self));
    }

    /// <summary>Plays this from now on; what is heard goes over to it.</summary>
    public async Task Set(SoundHandle handle)
    {
        if (_attached.Task.IsCompletedSuccessfully)
            await (await _attached.Task).InvokeVoidAsync("set", handle);
    }

    /// <summary>Called by the script.</summary>
    [JSInvokable]
    public Task<SoundHandle?> Renew() => Renewing();

    /// <summary>Called by the script.</summary>
    [JSInvokable]
    public Task LoopChosen(int first, int last) => Dragged(first, last);

    /// <summary>Called by the script.</summary>
    [JSInvokable]
    public Task LoopEdge(bool isStart, int bar) => EdgeSet(isStart, bar);

    /// <summary>Called by the script.</summary>
    [JSInvokable]
    public Task Started() => Begun();

    /// <summary>Called by the script.</summary>
    [JSInvokable]
    public Task Trouble(string kind) => Troubled(kind);

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        try
        {
            if (_attached.Task.IsCompletedSuccessfully)
            {
                var line = await _attached.Task;
                await line.InvokeVoidAsync("dispose");
                await line.DisposeAsync();
            }
        }
        catch (JSDisconnectedException)
        {
            // The page is gone, and its sound with it.
        }

        _self?.Dispose();
    }
}
