using System.Collections.Immutable;
using System.Globalization;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;

namespace Passagework.Studio.Components.Playing;

/// <summary>What can be chosen in the play line, each with its words.</summary>
internal static class PlayChoices
{
    /// <summary>Shares of the tempo, 1 is all of it.</summary>
    public static ImmutableArray<(string Words, double Value)> Speeds { get; } =
    [
        ("at full tempo", 1),
        ("at 90 of 100", 0.9),
        ("at 80 of 100", 0.8),
        ("at 70 of 100", 0.7),
        ("slow, 60 of 100", 0.6),
        ("at half of it", 0.5),
    ];

    /// <summary>Bars counted before.</summary>
    public static ImmutableArray<(string Words, int Value)> CountIns { get; } =
    [("none", 0), ("one bar", 1), ("two bars", 2)];

    /// <summary>Where the click falls.</summary>
    public static ImmutableArray<(string Words, ClickPattern? Value)> Clicks { get; } =
    [
        ("none", null),
        ("every beat", ClickPattern.Beats),
        ("backbeat, 2 and 4", ClickPattern.Backbeat),
        ("first beat", ClickPattern.Downbeat),
        ("between the beats", ClickPattern.Offbeat),
        ("every note's place", ClickPattern.Subdivision),
        ("starts of groups", ClickPattern.Groups),
        ("beats and groups", ClickPattern.BeatsAndGroups),
    ];

    /// <summary>Grooves of the backing.</summary>
    public static ImmutableArray<(string Words, Groove? Value)> GrooveChoices { get; } =
    [
        ("as the rhythm asks", null),
        .. Grooves.Words.Words.Select(word =>
            (word, Grooves.Words.Read(word).TryGet(out var groove, out _) ? (Groove?)groove : null)
        ),
    ];

    /// <summary>What sounds.</summary>
    public static ImmutableArray<(string Words, GuitarSound Value)> Guitars { get; } =
    [
        ("electric, clean", GuitarSound.CleanElectric),
        ("electric, driven", GuitarSound.DrivenElectric),
        ("steel strings", GuitarSound.SteelString),
        ("nylon strings", GuitarSound.Nylon),
    ];

    /// <summary>Whether strokes sound different.</summary>
    public static ImmutableArray<(string Words, bool Value)> Strokes { get; } =
    [("heard", true), ("all alike", false)];

    /// <summary>The share of a word in the list; null for another word.</summary>
    public static double? SpeedOf(string? text) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var share)
        && Speeds.Any(one => one.Value == share)
            ? share
            : null;

    /// <summary>By how much a key changes the tempo: arrows by one, with shift by five; 0 for another key.</summary>
    public static int TempoStep(string key, bool isShifted)
    {
        var size = isShifted ? 5 : 1;
        return key switch
        {
            "ArrowUp" => size,
            "ArrowDown" => -size,
            _ => 0,
        };
    }
}
