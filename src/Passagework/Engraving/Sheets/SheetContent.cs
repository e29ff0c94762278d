using System.Collections.Immutable;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The words of a sheet. Texts are printed as they stand; an empty one leaves its place out.</summary>
public sealed record SheetContent
{
    /// <summary>Says the idea.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for, in a line.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>For whom; an empty name leaves a line to write on.</summary>
    public string Student { get; init; } = "";

    /// <summary>From when; null leaves a line to write on.</summary>
    public DateOnly? From { get; init; }

    /// <summary>For how many weeks; null when not said.</summary>
    public int? Weeks { get; init; }

    /// <summary>Who gives it.</summary>
    public string Teacher { get; init; } = "";

    /// <summary>Where lessons are.</summary>
    public string Room { get; init; } = "";

    /// <summary>Start, goal and notes to the beat.</summary>
    public ImmutableArray<Phrase> Tempo { get; init; } = [];

    /// <summary>When to raise the tempo, and by how much.</summary>
    public string GoUp { get; init; } = "";

    /// <summary>Minutes a day and days a week.</summary>
    public string HowLong { get; init; } = "";

    /// <summary>What the picking hand does.</summary>
    public string Strokes { get; init; } = "";

    /// <summary>One or two things to listen for.</summary>
    public string ListenFor { get; init; } = "";

    /// <summary>What to change when it has become easy.</summary>
    public string WhenEasy { get; init; } = "";

    /// <summary>A variation that is written out under the music where there is room; null for none.</summary>
    public SheetVariation? Variation { get; init; }

    /// <summary>When to stop, and whom to ask.</summary>
    public string Caution { get; init; } = "";

    /// <summary>Names of the days in the log; as many rows as there are names.</summary>
    public ImmutableArray<string> Days { get; init; } = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

    /// <summary>Content equality.</summary>
    public bool Equals(SheetContent? other) =>
        other is not null
        && Texts.SequenceEqual(other.Texts)
        && (From, Weeks) == (other.From, other.Weeks)
        && Equals(Variation, other.Variation);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Title, Purpose, Student, From, Weeks);

    /// <summary>Every text, with the name of its field.</summary>
    internal IEnumerable<(string Field, string Text)> Texts =>
        [
            ("title", Title),
            ("purpose", Purpose),
            ("student", Student),
            ("teacher", Teacher),
            ("room", Room),
            .. Tempo.Select(phrase => ("tempo", phrase.Text)),
            ("goUp", GoUp),
            ("howLong", HowLong),
            ("strokes", Strokes),
            ("listenFor", ListenFor),
            ("whenEasy", WhenEasy),
            ("variation", Variation?.Words ?? ""),
            ("caution", Caution),
            .. Days.Select(day => ("days", day)),
        ];
}
