using CsCheck;
using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class SpellerLineTests
{
    [Fact]
    public void Spell_gives_the_octave_that_sounds()
    {
        var set = Music.Set("Eb", "locrian");

        var line = Speller.Spell(set, [51, 52, 54, 56, 57, 59, 61, 63]);

        Assert.Equal("Eb3 Fb3 Gb3 Ab3 A3 Cb4 Db4 Eb4", string.Join(' ', line));
        Assert.Equal([51, 52, 54, 56, 57, 59, 61, 63], line.Select(pitch => pitch.Midi));
    }

    [Theory]
    [InlineData("D D# E", new[] { 50, 51, 52 })]
    [InlineData("E Eb D", new[] { 52, 51, 50 })]
    [InlineData("D Eb", new[] { 50, 51 })]
    [InlineData("C D# E", new[] { 48, 51, 52 })]
    [InlineData("D Eb C", new[] { 50, 51, 48 })]
    [InlineData("D D# G", new[] { 50, 51, 55 })]
    [InlineData("D D# D# E", new[] { 50, 51, 51, 52 })]
    [InlineData("D D# E Eb D", new[] { 50, 51, 52, 51, 50 })]
    public void Spell_raises_the_blue_note_where_the_line_goes_on_upward(string names, int[] keys) =>
        Assert.Equal(names, Music.Spell(Music.Set("A", "minor blues"), keys));

    [Theory]
    [InlineData("F", "Bb B C B Bb", new[] { 46, 47, 48, 47, 46 })]
    [InlineData("Bb", "Eb E F E Eb", new[] { 51, 52, 53, 52, 51 })]
    [InlineData("Eb", "Ab A Bb A Ab", new[] { 56, 57, 58, 57, 56 })]
    [InlineData("G#", "C# D D# D C#", new[] { 49, 50, 51, 50, 49 })]
    [InlineData("F#", "B B# C# C B", new[] { 47, 48, 49, 48, 47 })]
    public void Spell_writes_a_natural_where_the_blue_note_would_be_hard_to_read(
        string root,
        string names,
        int[] keys
    ) => Assert.Equal(names, Music.Spell(Music.Set(root, "minor blues"), keys));

    [Fact]
    public void Spell_has_sharps_up_and_flats_down_in_a_chromatic_line_but_keeps_the_major_key()
    {
        var set = Music.Set("A", "chromatic");
        int[] up = [.. Enumerable.Range(45, 13)];

        Assert.Equal("A A# B C C# D D# E F F# G G# A", Music.Spell(set, up));
        Assert.Equal("A G# G F# F E Eb D C# C B Bb A", Music.Spell(set, [.. up.Reverse()]));
        Assert.Equal(
            "F Gb G Ab A Bb B C",
            string.Join(
                ' ',
                Music.Spell(Music.Set("F", "chromatic"), 60, 59, 58, 57, 56, 55, 54, 53).Split(' ').Reverse()
            )
        );
        Assert.Equal(
            "F F# G G# A Bb B C",
            Music.Spell(Music.Set("F", "chromatic"), 53, 54, 55, 56, 57, 58, 59, 60)
        );
    }

    [Fact]
    public void Spell_lets_a_chromatic_line_end_the_way_it_came()
    {
        var set = Music.Set("C", "chromatic");

        Assert.Equal("D D#", Music.Spell(set, 62, 63));
        Assert.Equal("E Eb Eb", Music.Spell(set, 64, 63, 63));
        Assert.Equal("D#", Music.Spell(set, 63));
    }

    [Fact]
    public void Spell_never_writes_one_pitch_two_ways_inside_one_cell()
    {
        var blues = Music.Set("A", "minor blues");
        int[] keys = [50, 51, 52, 51, 50, 51, 48];

        var apart = Speller.Spell(blues, keys, [0, 0, 0, 1, 1, 1, 1]);
        var together = Speller.Spell(blues, keys, [0, 0, 0, 0, 0, 0, 0]);
        var octave = Speller.Spell(Music.Set("C", "chromatic"), [61, 62, 73, 72], [3, 3, 3, 3]);
        var none = Speller.Spell(blues, keys, [null, null, null, null, null, null, null]);

        Assert.Equal("D3 D#3 E3 Eb3 D3 Eb3 C3", string.Join(' ', apart));
        Assert.Equal("D3 D#3 E3 D#3 D3 D#3 C3", string.Join(' ', together));
        Assert.Equal("C#4 D4 C#5 C5", string.Join(' ', octave));
        Assert.Equal("D3 D#3 E3 Eb3 D3 Eb3 C3", string.Join(' ', none));
    }

    [Theory]
    [InlineData("A", "minor pentatonic", "B F G# Bb A", new[] { 59, 65, 68, 58, 57 })]
    [InlineData("A", "minor pentatonic", "A C# D", new[] { 57, 61, 62 })]
    [InlineData("F", "minor pentatonic", "G Db E F", new[] { 55, 61, 64, 65 })]
    [InlineData("Eb", "major pentatonic", "Eb Ab D", new[] { 63, 68, 62 })]
    [InlineData("G#", "minor pentatonic", "A# G G#", new[] { 58, 55, 56 })]
    [InlineData("A", "dorian", "E F E", new[] { 64, 65, 64 })]
    public void Spell_names_notes_outside_the_set_from_the_key(
        string root,
        string scale,
        string names,
        int[] keys
    ) => Assert.Equal(names, Music.Spell(Music.Set(root, scale), keys));

    [Fact]
    public void Spell_without_a_scale_has_sharps_up_and_flats_down()
    {
        Assert.Equal("C C# D D# E Eb D Db C", Music.Spell(null, 60, 61, 62, 63, 64, 63, 62, 61, 60));
        Assert.Equal("", Music.Spell(null));
    }

    [Fact]
    public void Spell_refuses_cells_of_another_number() =>
        Assert.Throws<ArgumentException>(() => Speller.Spell(null, [60, 61], [0]));

    [Fact]
    public void Spell_sounds_as_written_and_repeats_an_octave_higher()
    {
        var set = Gen.Int[0, 6]
            .Select(
                Gen.Int[-1, 1],
                Gen.Int[0, Scales.All.Length - 1],
                (letter, alteration, scale) =>
                    NoteSet.TryNamed(NoteName.Of(letter, alteration), Scales.All[scale].Name, out var named)
                        ? named
                        : throw new InvalidOperationException()
            );

        set.Select(Gen.Int[24, 96].Array[1, 24])
            .Sample(
                (notes, keys) =>
                {
                    var low = Speller.Spell(notes, keys);
                    var high = Speller.Spell(notes, [.. keys.Select(key => key + 12)]);
                    return low.Select(pitch => pitch.Midi).SequenceEqual(keys)
                        && high.SequenceEqual(low.Select(pitch => pitch with { Octave = pitch.Octave + 1 }));
                }
            );
    }
}
