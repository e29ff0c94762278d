namespace Passagework.Studio.Tests.Hosting;

/// <summary>One studio for all tests of a class; they find what they made by its name and leave the rest alone.</summary>
public sealed class RunningStudio : IAsyncLifetime
{
    /// <summary>The process.</summary>
    internal StudioProcess Process { get; private set; } = null!;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync() => Process = await StudioProcess.Start();

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        Process.Dispose();
        return ValueTask.CompletedTask;
    }
}
