using Microsoft.AspNetCore.Components;
using Passagework.Hands;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Components.Exercise;

/// <summary>A part of the page that follows from the measured exercise alone, and is worked out anew only with it.</summary>
public abstract class MeasuredPart : ComponentBase
{
    private Measurement? _last;

    /// <summary>The exercise.</summary>
    [Parameter, EditorRequired]
    public required Measurement Measured { get; set; }

    /// <summary>What is set for the room.</summary>
    [CascadingParameter]
    public StudioSettings Settings { get; set; } = new();

    /// <summary>Works out what is shown; called when another measurement came.</summary>
    protected abstract Task WorkOut();

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync()
    {
        if (ReferenceEquals(_last, Measured))
        {
            return Task.CompletedTask;
        }

        _last = Measured;
        return WorkOut();
    }
}
