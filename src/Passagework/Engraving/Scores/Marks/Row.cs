using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Scores;

/// <summary>Something that stands in a row along a system.</summary>
/// <param name="Ink">Its ink around the place where it is drawn; x counts from the line's start, y from its baseline.</param>
/// <param name="Draw">Draws it with its baseline at a height.</param>
internal readonly record struct RowItem(Box Ink, Action<double> Draw);

/// <summary>Puts marks on one height along a system, clear of everything drawn before.</summary>
internal static class Row
{
    private const double Apart = 0.4;

    /// <summary>Above a block; items that would meet go into a further row. The baseline of the first row, null for none.</summary>
    public static double? Above(Block block, IEnumerable<RowItem> items, double gap, double atLeast = 0) =>
        Place(
            items,
            row =>
                Math.Min(
                    -atLeast,
                    row.Min(item => block.FreeAbove(item.Ink.Left, item.Ink.Right, gap) - item.Ink.Bottom)
                )
        );

    /// <summary>Below a block.</summary>
    public static double? Below(Block block, IEnumerable<RowItem> items, double gap) =>
        Place(
            items,
            row => row.Max(item => block.FreeBelow(item.Ink.Left, item.Ink.Right, gap) - item.Ink.Top)
        );

    private static double? Place(IEnumerable<RowItem> items, Func<List<RowItem>, double> baseline)
    {
        double? first = null;
        var left = items.ToList();
        while (left.Count > 0)
        {
            var (row, rest) = (new List<RowItem>(), new List<RowItem>());
            foreach (var item in left)
            {
                var meets = row.Exists(other =>
                    item.Ink.Left < other.Ink.Right + Apart && other.Ink.Left < item.Ink.Right + Apart
                );
                (meets ? rest : row).Add(item);
            }

            var y = baseline(row);
            first ??= y;
            row.ForEach(item => item.Draw(y));
            left = rest;
        }

        return first;
    }
}
