using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Use in music in words: how many of the figures live in the pieces, and the one most at home.</summary>
internal sealed class UseInMusicVoice : ICriterionVoice
{
    public string Missing => "there is no music at hand, or it has no three notes in a row to look for";

    public string Sentence(MeasuredCandidate candidate)
    {
        var use = candidate.UseInMusic;
        return use.MostAtHome is null
            ? $"none of its figures lives in the {Pieces(use)}"
            : $"{Shares.InTen(use.ShareMet)} of its figures live in the {Pieces(use)}; {MostAtHome(candidate)}";
    }

    public string Brief(MeasuredCandidate candidate) =>
        $"{Shares.InTen(candidate.UseInMusic.ShareMet)} of its figures live in the pieces";

    public string Pro(MeasuredCandidate candidate) => $"turns up in music: {MostAtHome(candidate)}";

    public string Con(MeasuredCandidate candidate)
    {
        var use = candidate.UseInMusic;
        return use.MostAtHome is null
            ? $"rarely becomes a line: none of its figures lives in the {Pieces(use)}"
            : $"rarely becomes a line: even {MostAtHome(candidate)}";
    }

    public string Better(MeasuredCandidate better, MeasuredCandidate worse) =>
        $"the figures are met more often in the pieces ({Shares.Against(100 * better.UseInMusic.Found, 100 * worse.UseInMusic.Found, " in 100 chances")})";

    private static string MostAtHome(MeasuredCandidate candidate)
    {
        var use = candidate.UseInMusic;
        return use.MostAtHome is { } home
            ? $"its commonest figure there, {Notes(candidate, home)}, stands in {NumberWords.OutOf(home.Pieces, use.Pieces)}"
            : "no figure of it is at home there";
    }

    private static string Notes(MeasuredCandidate candidate, CellAtHome home) =>
        string.Join(
            '–',
            candidate
                .Forms[0]
                .Realization.Notes.Skip(home.FirstNote)
                .Take(home.Shape.Notes)
                .Select(note => note.Note.Pitch.Name.ToString())
        );

    private static string Pieces(UseInMusic use) => NumberWords.Of(use.Pieces, "piece");
}
