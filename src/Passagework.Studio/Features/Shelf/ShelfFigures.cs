using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Studio.Features.Shelf;

/// <summary>What an exercise comes to for one player, and its two small pictures.</summary>
public sealed record ShelfFigures
{
    /// <summary>Where it tops out; null where no hand is asked anything.</summary>
    public TopTempo? Top { get; init; }

    /// <summary>Top tempo in notes a second; null where no hand is asked anything.</summary>
    public double? NotesPerSecond { get; init; }

    /// <summary>How it sits against the beat; null where no groups are given.</summary>
    public string? Beat { get; init; }

    /// <summary>Feels in which the groups come out even within a phrase.</summary>
    public IReadOnlySet<Feel> SitsIn { get; init; } = new HashSet<Feel>();

    /// <summary>The first bar as tab, as markup.</summary>
    public string FirstBar { get; init; } = "";

    /// <summary>What each note asks of both hands, as markup.</summary>
    public string Hands { get; init; } = "";

    /// <summary>Why it cannot be played or laid out; null when it can.</summary>
    public string? Fault { get; init; }

    /// <summary>The figures of a measurement.</summary>
    public static ShelfFigures Of(Measurement measured)
    {
        return new ShelfFigures
        {
            Top = measured.Top,
            NotesPerSecond = measured.Ceiling.Least,
            Beat = measured.Fit?.Sentence,
            SitsIn = (measured.Fit?.Feels ?? [])
                .Where(feel => feel.Grade != FeelGrade.Open)
                .Select(feel => feel.Feel)
                .ToHashSet(),
            FirstBar = ShelfPictures.FirstBar(measured.Realization),
            Hands = ShelfPictures.Hands(measured),
        };
    }
}
