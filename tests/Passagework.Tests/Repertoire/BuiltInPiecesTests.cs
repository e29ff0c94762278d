using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Repertoire;
using Passagework.Rhythm;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Repertoire;

public class BuiltInPiecesTests
{
    private static readonly string Folder = Path.Combine(
        Repository.Root,
        "src",
        "Passagework",
        "Repertoire",
        "pieces"
    );

    [Fact]
    public void Every_file_is_built_in_and_has_a_title_of_its_own()
    {
        var files = Directory.GetFiles(Folder).Select(file => Path.GetFileNameWithoutExtension(file));

        Assert.Equal(files.Order(StringComparer.Ordinal), BuiltInPieces.Ids.Order(StringComparer.Ordinal));
        Assert.Equal(23, BuiltInPieces.Lines.Select(piece => piece.Line.Recipe.Title).Distinct().Count());
    }

    [Fact]
    public void The_reader_leaves_out_nothing_but_chord_symbols() =>
        Assert.All(
            Directory.GetFiles(Folder),
            file =>
                Assert.Equal(
                    ["chord symbol left out"],
                    MusicXml.Read(File.ReadAllBytes(file)).OrThrow().LeftOut.Select(remark => remark.Text)
                )
        );

    [Fact]
    public void Every_piece_is_sixteen_to_thirty_two_bars_long() =>
        Assert.All(
            BuiltInPieces.Lines,
            piece =>
            {
                var meter = piece.Line.Recipe.Rhythm.Meter;
                Assert.InRange(BarBeat.Of(piece.Line.Notes[^1].Onset, meter).Bar, 16, 32);
            }
        );

    [Fact]
    public void Every_piece_can_be_played_and_keeps_its_places() =>
        Assert.All(
            PieceCollection.BuiltIn(Player.At(3), Technique.Alternate).OrThrow(),
            piece =>
            {
                Assert.All(piece.Line.Notes, note => Assert.NotNull(note.Place));
                Assert.Equal(piece.Line.Notes.Length - 1, piece.Moves.Length);
                Assert.Equal(0, piece.TonesLeftOut);
            }
        );

    [Fact]
    public void No_two_pieces_are_alike()
    {
        var cells = BuiltInPieces.Lines.Select(piece => Cells.In(piece.Line)).ToList();
        for (var a = 0; a < cells.Count; a++)
        {
            for (var b = 0; b < a; b++)
            {
                Assert.True(
                    Likeness.Overlap(cells[a], cells[b]) < 0.25,
                    $"{BuiltInPieces.Ids[a]} and {BuiltInPieces.Ids[b]}"
                );
            }
        }
    }

    // The first level whose predicted ceiling reaches the written tempo, as the page says.
    [Fact]
    public void The_page_tells_bars_notes_frets_and_level_as_they_are()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "repertoire.md"));
        foreach (var (_, line) in BuiltInPieces.Lines)
        {
            var row = page.Split('\n')
                .Single(text => text.StartsWith($"| {line.Recipe.Title} |", StringComparison.Ordinal));
            var cells = row.Split('|', StringSplitOptions.TrimEntries);
            Assert.Equal(
                (cells[5].Split(' ')[0], cells[6], cells[7], cells[8]),
                (Tempo(line), Size(line), Frets(line), Level(line))
            );
        }
    }

    private static string Tempo(Line line) =>
        line.Recipe.Rhythm.TempoBpm?.ToString(CultureInfo.InvariantCulture) ?? "";

    private static string Size(Line line) =>
        $"{BarBeat.Of(line.Notes[^1].Onset, line.Recipe.Rhythm.Meter).Bar}, {line.Notes.Length}";

    private static string Frets(Line line)
    {
        var frets = line.Notes.Select(note => note.Place?.Fret ?? -1).ToList();
        return $"{frets.Min()}–{frets.Max()}";
    }

    private static string Level(Line line)
    {
        string[] names = ["beginner", "elementary", "intermediate", "advanced", "expert"];
        return names.First(name =>
            Measurer.Measure(line, Player.At(Array.IndexOf(names, name))).OrThrow().Bpm
            >= line.Recipe.Rhythm.TempoBpm
        );
    }
}
