namespace Passagework.Foundation;

/// <summary>Keeps the first fault of a reading, so that the reading itself can go straight on.</summary>
internal sealed class FirstFault
{
    /// <summary>The first; null while all is well.</summary>
    public Fault? Fault { get; private set; }

    /// <summary>Notes a fault unless there was one before.</summary>
    public void Add(Fault fault) => Fault ??= fault;
}
