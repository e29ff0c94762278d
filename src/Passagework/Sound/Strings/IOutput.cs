namespace Passagework.Sound.Strings;

/// <summary>What stands between the strings and the ear: pickup, body, amplifier.</summary>
internal interface IOutput
{
    /// <summary>Whole samples by which its sound comes later than what goes in.</summary>
    int Latency { get; }

    /// <summary>Whether nothing is left in it, so that silence in is silence out.</summary>
    bool Quiet { get; }

    /// <summary>Turns what pickup or bridge hear, and the noise past the strings, into the sound, in the first span.</summary>
    void Run(Span<float> heard, ReadOnlySpan<float> direct);

    /// <summary>Forgets.</summary>
    void Reset();
}
