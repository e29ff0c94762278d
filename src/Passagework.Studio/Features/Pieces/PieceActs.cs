using Passagework.Foundation;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Does what a button of the pieces says, and tells where to go then.</summary>
internal sealed class PieceActs(ThrowAwayPiece throwAway)
{
    private const string Away = "away:";
    private const string Back = "back:";

    /// <summary>The word of a button that throws away.</summary>
    public static string ThrowAway(PieceKey key) => Away + key;

    /// <summary>The word of a button that brings back.</summary>
    public static string BringBack(PieceKey key) => Back + key;

    /// <summary>Does it.</summary>
    /// <returns>The address to go to.</returns>
    public async Task<Outcome<string>> Do(string? act, CancellationToken stop = default)
    {
        if (IdAfter(Away, act) is { } away)
        {
            return await throwAway.Remove(away, stop) is { } fault
                ? fault
                : $"/pieces?thrown={PieceKey.Of(away)}";
        }

        if (IdAfter(Back, act) is { } back)
        {
            return await throwAway.BringBack(back, stop) is { } fault ? fault : "/pieces";
        }

        return new Fault("this button does nothing here", Right: "one of the buttons of the page");
    }

    private static Guid? IdAfter(string word, string? act) =>
        act?.StartsWith(word, StringComparison.Ordinal) == true
        && new PieceKey(act[word.Length..]).IsOwn(out var id)
            ? id
            : null;
}
