using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>Counts of legal forms, worked by hand for the project from the rules; chord shapes are common practice.</summary>
public class ChordFormsTests
{
    [Theory]
    [InlineData("F, barred at fret 1", "6:1 5:3 4:3 3:2 2:1 1:1", "133211 134211")]
    [InlineData("C, open", "5:3 4:2 3:0 2:1 1:0", "32010 42010 43010 43020")]
    [InlineData("A minor, open", "5:0 4:2 3:2 2:1 1:0", "02310 02410 03310 03320 03410 03420")]
    [InlineData(
        "A minor, barred at fret 5",
        "6:5 5:7 4:7 3:5 2:5 1:5",
        "123111 124111 133111 133112 134111 134112"
    )]
    public void Forms_are_the_worked_ones(string chord, string places, string expected) =>
        Assert.Equal((chord, expected), (chord, Forms(places, 1)));

    [Fact]
    public void Standard_grips_are_among_the_forms()
    {
        Assert.Contains("134211", Forms("6:1 5:3 4:3 3:2 2:1 1:1", 1), StringComparison.Ordinal);
        Assert.Contains("32010", Forms("5:3 4:2 3:0 2:1 1:0", 1), StringComparison.Ordinal);
        Assert.Contains("02310", Forms("5:0 4:2 3:2 2:1 1:0", 1), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_string_under_a_barre_is_impossible() =>
        Assert.DoesNotContain(
            "11",
            Forms("4:5 3:0 2:5", 1).Replace("0", "", StringComparison.Ordinal),
            StringComparison.Ordinal
        );

    [Fact]
    public void Reach_beyond_the_hand_has_no_form()
    {
        Assert.NotEqual("", Forms("6:1 1:5", 1));
        Assert.Equal("", Forms("6:1 1:6", 1));
        Assert.Equal("", Forms("6:1 1:5", 0.85));
    }

    [Fact]
    public void Two_places_on_one_string_are_no_chord() =>
        Assert.Throws<ArgumentException>(() =>
            ChordForms.Of([Place.At(1, 1), Place.At(1, 2)], Fretboard.Standard)
        );

    private static string Forms(string places, double handSize) =>
        string.Join(
            ' ',
            ChordForms
                .Of([.. places.Split(' ').Select(Lines.PlaceOf)], Fretboard.Standard, handSize)
                .Select(form => string.Concat(form))
                .Order(StringComparer.Ordinal)
        );
}
