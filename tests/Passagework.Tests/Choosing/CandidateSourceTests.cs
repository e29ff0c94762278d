using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Tests.Choosing;

public sealed class CandidateSourceTests
{
    [Fact]
    public void A_family_is_its_up_and_down_form_with_both_first_strokes()
    {
        var source = CandidateSource.OfFamily("groups-of-five").OrThrow();

        Assert.Equal(
            ("groups-of-five", "Groups of five", "groups-of-five"),
            (source.Id, source.Title, source.Family)
        );
        Assert.Equal("groups of five", source.Mention);
        Assert.Equal([FirstStroke.Down, FirstStroke.Up], source.Forms.Select(form => form.Picking.First));
        Assert.All(source.Forms, form => Assert.Equal(Direction.UpAndDown, form.Movement.Direction));
    }

    [Fact]
    public void A_family_without_that_form_is_all_its_forms()
    {
        var diagonal = CandidateSource.OfFamily("diagonal").OrThrow();
        var trill = CandidateSource.OfFamily("trill").OrThrow();

        Assert.Equal((4, "Diagonal climb"), (diagonal.Forms.Length, diagonal.Title));
        Assert.Equal((4, "Trill"), (trill.Forms.Length, trill.Title));
    }

    [Fact]
    public void One_technique_serves_all_and_strokes_fixed_for_another_give_way()
    {
        var sweeps = CandidateSource.OfFamily("three-string-sweeps").OrThrow();
        var plucked = CandidateSource.OfFamily("thumb-and-fingers").OrThrow();
        var asShipped = CandidateSource.OfFamily("thumb-and-fingers", Technique.Fingers).OrThrow();

        Assert.All(sweeps.Forms, form => Assert.Equal(Technique.Alternate, form.Picking.Technique));
        Assert.All(
            plucked.Forms,
            form => Assert.DoesNotContain(form.Fretting.Locks, one => one.Stroke is not null)
        );
        Assert.Contains(asShipped.Forms[0].Fretting.Locks, one => one.Stroke is not null);
    }

    [Fact]
    public void Every_family_of_the_library_is_a_candidate()
    {
        foreach (var family in Library.Families)
        {
            var source = CandidateSource.OfFamily(family).OrThrow();
            Assert.True(source.Forms.Length >= 2, family);
            Assert.False(string.IsNullOrEmpty(source.Title), family);
        }
    }

    [Fact]
    public void A_form_keeps_its_first_stroke_and_belongs_to_its_family()
    {
        var source = CandidateSource.OfForm(
            "groups-of-five-up",
            Library.Find("groups-of-five-up").OrThrow().Recipe
        );

        Assert.Equal(("groups-of-five", "Groups of five, rising"), (source.Family, source.Title));
        Assert.Equal(FirstStroke.Down, Assert.Single(source.Forms).Picking.First);
    }

    [Fact]
    public void An_exercise_of_the_teachers_own_is_a_family_of_its_own_and_quoted()
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe with { Title = "Saltmarsh drill" };
        var source = CandidateSource.OfForm("drill", recipe);

        Assert.Equal(("drill", "'Saltmarsh drill'"), (source.Family, source.Mention));
    }

    [Theory]
    [InlineData("groups-of-five-up", "groups-of-five-up")]
    [InlineData("drill", "'drill'")]
    public void An_exercise_without_a_title_is_called_by_its_name(string id, string mention)
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;

        Assert.Equal(mention, CandidateSource.OfForm(id, recipe with { Title = "" }).Mention);
        Assert.Equal(mention, CandidateSource.OfForm(id, recipe with { Title = " " }).Mention);
    }

    [Fact]
    public void A_change_of_the_first_stroke_leaves_one_form()
    {
        var source = CandidateSource
            .OfFamily("groups-of-five")
            .OrThrow()
            .Changed(recipe => recipe with { Picking = recipe.Picking with { First = FirstStroke.Up } })
            .OrThrow();

        Assert.Equal(FirstStroke.Up, Assert.Single(source.Forms).Picking.First);
    }

    [Fact]
    public void A_change_that_fails_is_passed_on()
    {
        var changed = CandidateSource
            .OfFamily("groups-of-five")
            .OrThrow()
            .Changed(_ => new Fault("not that way"));

        Assert.False(changed.TryGet(out _, out var fault));
        Assert.Equal("not that way", fault.What);
    }

    [Fact]
    public void An_unknown_family_is_refused_with_the_one_that_was_meant()
    {
        Assert.False(CandidateSource.OfFamily("groups-of-fife").TryGet(out _, out var fault));
        Assert.Contains("'groups-of-five'", fault.Right, StringComparison.Ordinal);
    }
}
