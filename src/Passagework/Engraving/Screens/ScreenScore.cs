using System.Collections.Immutable;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Strips;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Engraving.Screens;

/// <summary>An exercise engraved for a page that changes while one looks at it: few elements, few bytes.</summary>
/// <param name="Systems">From first to last.</param>
/// <param name="Key">How to read the strip, line by line: only what occurs in it; empty without a strip.</param>
/// <param name="TempoBpm">Felt beats a minute at which the strip is drawn.</param>
/// <param name="Words">What is shown, in one sentence for those who do not see it.</param>
/// <param name="Rows">The same note by note, for a table.</param>
/// <remarks>The page around it holds <see cref="ScreenDefs"/> once.</remarks>
/// <example>
/// <c>ScreenScore.Draw(measured, new ScreenOptions { WidthPx = 944, Chosen = 7 })</c>
/// </example>
public sealed record ScreenScore(
    ImmutableArray<ScreenSystem> Systems,
    ImmutableArray<ScreenKey> Key,
    double TempoBpm,
    string Words,
    ImmutableArray<ScreenRow> Rows
)
{
    /// <summary>Engraves and draws; refused where a number is out of its range or the music cannot be written.</summary>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static Outcome<ScreenScore> Draw(Measurement measured, ScreenOptions options)
    {
        if (ScreenRules.Check(measured, options) is { } fault)
        {
            return fault;
        }

        var tempo = options.TempoBpm ?? measured.StartBpm;
        var layout = new ScreenLayout(options, measured.Realization.Line.Recipe.Rhythm.Meter);
        var words = new ScreenWords(measured, tempo, layout);
        return HandsStrip
            .Of(measured, tempo)
            .Then(strip =>
                ScoreEngraver
                    .Engrave(measured.Realization, layout.Music)
                    .Then(score =>
                        Written(options.Strip ? strip.Under(score, layout.Strip) : score, measured, layout)
                    )
                    .Then(systems =>
                        ScreenKey
                            .Of(options.Strip ? strip : null)
                            .Then<ScreenScore>(key => new ScreenScore(
                                systems,
                                key,
                                tempo,
                                words.Sentence(),
                                words.Rows()
                            ))
                    )
            );
    }

    private static Outcome<ImmutableArray<ScreenSystem>> Written(
        Score score,
        Measurement measured,
        ScreenLayout layout
    )
    {
        var writer = new ScreenSystemWriter(measured.Realization, layout);
        var systems = ImmutableArray.CreateBuilder<ScreenSystem>(score.Systems.Length);
        foreach (var system in score.Systems)
        {
            if (!writer.Write(system).TryGet(out var written, out var fault))
            {
                return fault;
            }

            systems.Add(written);
        }

        return systems.MoveToImmutable();
    }
}

/// <summary>One system: a picture, and where things are in it, in pixels from its upper left corner.</summary>
public sealed record ScreenSystem
{
    /// <summary>Counted from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Number of its first bar; a pick-up is bar 0.</summary>
    public required int FirstBar { get; init; }

    /// <summary>Number of its last bar.</summary>
    public required int LastBar { get; init; }

    /// <summary>
    /// One <c>svg</c> element with width and height. Each note that begins in it has one transparent rectangle with its index
    /// in <c>data-note</c>; nothing else takes the pointer.
    /// </summary>
    public required string Svg { get; init; }

    /// <summary>Width, as asked for.</summary>
    public required double WidthPx { get; init; }

    /// <summary>From the highest to the lowest ink.</summary>
    public required double HeightPx { get; init; }

    /// <summary>Where the lines begin to carry notes.</summary>
    public required double MusicStartPx { get; init; }

    /// <summary>Where the lines end.</summary>
    public required double MusicEndPx { get; init; }

    /// <summary>The notes that begin in it, in order.</summary>
    public required ImmutableArray<ScreenNote> Notes { get; init; }

    /// <summary>The staff lines; null without a staff.</summary>
    public ScreenBand? Staff { get; init; }

    /// <summary>The tab lines; null without tab.</summary>
    public ScreenBand? Tab { get; init; }

    /// <summary>Both halves of the strip; null without one.</summary>
    public ScreenBand? Strip { get; init; }
}

/// <summary>The column of a note.</summary>
/// <param name="Note">Index of the note.</param>
/// <param name="XPx">Middle of the head, the tab number and all that belongs to them.</param>
/// <param name="LeftPx">Left edge of the column, where a pointer still means the note.</param>
/// <param name="RightPx">Right edge.</param>
public sealed record ScreenNote(int Note, double XPx, double LeftPx, double RightPx);

/// <summary>A row of a system.</summary>
/// <param name="TopPx">Its upper edge.</param>
/// <param name="BottomPx">Its lower edge.</param>
public sealed record ScreenBand(double TopPx, double BottomPx);
