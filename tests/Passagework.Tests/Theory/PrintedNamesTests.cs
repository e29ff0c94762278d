using Passagework.Theory;

namespace Passagework.Tests.Theory;

// Names as textbooks in German and in the Romance languages print them (common practice).
public class PrintedNamesTests
{
    [Theory]
    [InlineData("B", "B", "H", "Si")]
    [InlineData("Bb", "B♭", "B", "Si♭")]
    [InlineData("Bbb", "B𝄫", "Heses", "Si𝄫")]
    [InlineData("F#", "F♯", "Fis", "Fa♯")]
    [InlineData("Eb", "E♭", "Es", "Mi♭")]
    [InlineData("Ebb", "E𝄫", "Eses", "Mi𝄫")]
    [InlineData("Ab", "A♭", "As", "La♭")]
    [InlineData("Abb", "A𝄫", "Asas", "La𝄫")]
    [InlineData("Cb", "C♭", "Ces", "Do♭")]
    [InlineData("F##", "F𝄪", "Fisis", "Fa𝄪")]
    [InlineData("G", "G", "G", "Sol")]
    public void A_note_is_named_in_three_ways(string file, string letters, string withH, string syllables)
    {
        Assert.True(NoteName.TryParse(file, out var name));

        Assert.Equal(letters, PrintedNames.Of(name, NoteNaming.Letters));
        Assert.Equal(withH, PrintedNames.Of(name, NoteNaming.LettersWithH));
        Assert.Equal(syllables, PrintedNames.Of(name, NoteNaming.Syllables));
    }

    [Fact]
    public void Every_name_of_every_way_reads_back()
    {
        foreach (var naming in Enum.GetValues<NoteNaming>())
        {
            for (var letter = 0; letter < 7; letter++)
            {
                for (var alteration = -3; alteration <= 3; alteration++)
                {
                    var name = NoteName.Of(letter, alteration);
                    Assert.True(PrintedNames.TryRead(PrintedNames.Of(name, naming), naming, out var read));
                    Assert.Equal(name, read);
                }
            }
        }
    }

    [Theory]
    [InlineData("B", NoteNaming.LettersWithH, "Bb")]
    [InlineData("h", NoteNaming.LettersWithH, "B")]
    [InlineData("F#", NoteNaming.LettersWithH, "F#")]
    [InlineData("Sib", NoteNaming.Syllables, "Bb")]
    [InlineData("fa#", NoteNaming.Syllables, "F#")]
    [InlineData("Bb", NoteNaming.Letters, "Bb")]
    [InlineData("B", NoteNaming.Letters, "B")]
    public void What_is_typed_is_read_as_the_room_means_it(string typed, NoteNaming naming, string file)
    {
        Assert.True(PrintedNames.TryRead(typed, naming, out var name));
        Assert.Equal(file, name.ToString());
    }

    [Theory]
    [InlineData("H", NoteNaming.Letters)]
    [InlineData("X", NoteNaming.LettersWithH)]
    [InlineData("", NoteNaming.Syllables)]
    public void What_no_room_says_is_no_note(string typed, NoteNaming naming) =>
        Assert.False(PrintedNames.TryRead(typed, naming, out _));
}
