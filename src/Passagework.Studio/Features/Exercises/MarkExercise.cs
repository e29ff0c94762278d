using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Keeps what a teacher gives an exercise for criteria of the teacher's own.</summary>
internal sealed class MarkExercise(Store store)
{
    /// <summary>What a criterion begins with.</summary>
    public const string Middling = "50";

    private const int Most = 100;
    private const int LongestName = 40;

    /// <summary>The marks that any exercise has been given, each for this one, in hundredths.</summary>
    public async Task<IReadOnlyList<(string Criterion, int Value)>> Read(
        ExerciseKey key,
        CancellationToken stop = default
    )
    {
        await using var db = await store.Open(stop);
        var marks = await db.Marks.AsNoTracking().Where(mark => mark.Exercise == key.Text).ToListAsync(stop);
        return
        [
            .. marks
                .OrderBy(mark => mark.Criterion, StringComparer.Ordinal)
                .Select(mark => (mark.Criterion, (int)Math.Round(mark.Value * Most))),
        ];
    }

    /// <summary>Gives a mark of 0 to 100; an empty one takes it away.</summary>
    public async Task<Fault?> Mark(
        ExerciseKey key,
        string criterion,
        string value,
        CancellationToken stop = default
    )
    {
        var name = Name(criterion);
        if (name.Length is 0 or > LongestName)
        {
            return new Fault(
                "a criterion needs a name",
                "",
                $"up to {LongestName} letters, such as fits my band"
            );
        }

        var isGiven =
            int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var mark)
            && mark <= Most;
        if (!isGiven && value.Length > 0)
        {
            return new Fault($"{value} is no mark", "", $"0 to {Most}");
        }

        return await Saving.Do(() => Keep((key.Text, name), isGiven ? mark / (double)Most : null, stop));
    }

    /// <summary>A criterion as it is said.</summary>
    public static string Words(string criterion) => criterion.Replace('-', ' ');

    private static string Name(string words) =>
        string.Join(
            '-',
            words.Trim().ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)
        );

    private async Task Keep((string Exercise, string Criterion) of, double? value, CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        var row = await db.Marks.SingleOrDefaultAsync(
            one => one.Exercise == of.Exercise && one.Criterion == of.Criterion,
            stop
        );
        switch (row, value)
        {
            case (null, { } given):
                db.Marks.Add(
                    new MarkRow
                    {
                        Exercise = of.Exercise,
                        Criterion = of.Criterion,
                        Value = given,
                    }
                );
                break;
            case ({ } known, { } given):
                known.Value = given;
                break;
            case ({ } known, null):
                db.Marks.Remove(known);
                break;
        }

        await db.SaveChangesAsync(stop);
    }
}
