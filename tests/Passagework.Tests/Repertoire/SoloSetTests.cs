using CsCheck;
using Passagework.Exercises;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class SoloSetTests
{
    [Fact]
    public void Solos_that_hold_a_figure_are_counted_whatever_the_key()
    {
        var solos = new SoloSet([
            Tunes.Of("60 62 64 62 60 62 64"),
            Tunes.Of("67 69 71"),
            Tunes.Of("60 61 62"),
        ]);
        var figure = Only("50 52 54");

        Assert.Equal(2, solos.Holding(figure));
        Assert.Equal(3, solos.Times(figure));
        Assert.Equal(2.0 / 3, solos.ShareHolding(figure));
        Assert.Equal(13, solos.Notes);
        Assert.Equal(0, solos.Holding(Only("60 64 67")));
    }

    // Keys after one another: 60>62 twice, 62>64, 62>60. A figure +2 +2 starts at 60 (2 of 4) and goes on to 62 (all) and 64
    // (1 of 2): 0.25. All steps are even. Windows of three: 3. Expected 1 − 0.75³.
    [Fact]
    public void Chance_is_made_of_neighbours()
    {
        var solos = new SoloSet([Tunes.Of("60 62 60 62 64")]);

        Assert.Equal(1 - (0.75 * 0.75 * 0.75), solos.ExpectedShare(Only("60 62 64")) ?? -1, 1e-12);
        Assert.Equal(1 / 0.578125, solos.Lift(Only("60 62 64")) ?? -1, 1e-12);
        Assert.True(solos.IsAtHome(Only("60 62 64")));
        Assert.True(solos.BeatsChance(Only("60 62 64")));
        // Played over and over, chance makes it too.
        Assert.False(new SoloSet([Tunes.Of("60 62 64 60 62 64 60 62 64")]).BeatsChance(Only("60 62 64")));
    }

    [Fact]
    public void What_chance_never_makes_has_no_lift()
    {
        var solos = new SoloSet([Tunes.Of("60 62 60 62 64")]);

        Assert.Equal(0, solos.ExpectedShare(Only("60 67 74")));
        Assert.Null(solos.Lift(Only("60 67 74")));
        Assert.False(solos.IsAtHome(Only("60 67 74")));
    }

    [Fact]
    public void Without_solos_there_are_no_shares()
    {
        var solos = new SoloSet([]);

        Assert.Null(solos.ShareHolding(Only("60 62 64")));
        Assert.Null(solos.ExpectedShare(Only("60 62 64")));
        Assert.False(solos.IsAtHome(Only("60 62 64")));
    }

    [Fact]
    public void Counts_equal_a_plain_search() =>
        Tunes
            .Any.Array[1, 4]
            .Sample(lines =>
            {
                var solos = new SoloSet(lines);
                foreach (var shape in lines.SelectMany(line => Cells.In(line).Classes).Distinct())
                {
                    Assert.Equal(lines.Count(line => Searched(line, shape) > 0), solos.Holding(shape));
                    Assert.Equal(lines.Sum(line => Searched(line, shape)), solos.Times(shape));
                    Assert.Equal(
                        Enumerable.Range(0, lines.Length).Where(i => Searched(lines[i], shape) > 0),
                        solos.Holders(shape)
                    );
                }
            });

    [Fact]
    public void Chances_equal_a_walk_through_all_notes() =>
        Tunes
            .Any.Array[1, 3]
            .Sample(lines =>
            {
                var melodies = lines.Select(line => new Melody(line)).ToList();
                var chain = new NoteChain(melodies);
                foreach (var shape in lines.SelectMany(line => Cells.In(line).Classes).Distinct().Take(20))
                {
                    Assert.Equal(Walked(melodies, shape), chain.Probability(shape), 1e-12);
                }
            });

    // Every note that is followed by another starts a walk; each step is the share of equal notes that go on so.
    private static double Walked(List<Melody> solos, CellShape shape)
    {
        var pairs = solos
            .SelectMany(solo =>
                Enumerable
                    .Range(0, solo.Count)
                    .Where(note => solo.Holds(note, 2))
                    .Select(note => (From: solo.Key(note), To: solo.Key(note + 1)))
            )
            .ToList();
        var sum = 0.0;
        foreach (var (from, _) in pairs)
        {
            var (chance, key) = (1.0 / pairs.Count, from);
            for (var i = 0; i < shape.Notes - 1; i++)
            {
                var here = pairs.Where(pair => pair.From == key).ToList();
                key += shape.Interval(i);
                chance *= here.Count == 0 ? 0 : (double)here.Count(pair => pair.To == key) / here.Count;
            }

            sum += chance;
        }

        return sum * Rhythm(solos, shape);
    }

    private static double Rhythm(List<Melody> solos, CellShape shape)
    {
        var steps = solos.SelectMany(solo => solo.Shapes(3)).Select(each => each.Step(0)).ToList();
        var pairs = solos
            .SelectMany(solo => solo.Shapes(4))
            .Select(each => (each.Step(0), each.Step(1)))
            .ToList();
        var chance = (double)steps.Count(step => step == shape.Step(0)) / steps.Count;
        for (var i = 1; i < shape.Notes - 2; i++)
        {
            var here = pairs.Where(pair => pair.Item1 == shape.Step(i - 1)).ToList();
            chance *=
                here.Count == 0 ? 0 : (double)here.Count(pair => pair.Item2 == shape.Step(i)) / here.Count;
        }

        return chance;
    }

    private static int Searched(Line line, CellShape shape)
    {
        var melody = new Melody(line);
        return Enumerable
            .Range(0, line.Notes.Length)
            .Count(start =>
                melody.Holds(start, shape.Notes)
                && Enumerable
                    .Range(0, shape.Notes - 1)
                    .All(i =>
                        line.Notes[start + i + 1].Midi - line.Notes[start + i].Midi == shape.Interval(i)
                    )
                && melody.Shape(start, shape.Notes).ToString() == shape.ToString()
            );
    }

    private static CellShape Only(string tune) => new Melody(Tunes.Of(tune)).Shapes(3).First();
}
