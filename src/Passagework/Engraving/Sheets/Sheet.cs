using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Sheets;

/// <summary>A sheet and what was done to make it fit.</summary>
/// <param name="Page">What is printed.</param>
/// <param name="Remarks">What a teacher should know: texts that were cut, rows and bars that were left out.</param>
public sealed record Sheet(Page Page, ImmutableArray<string> Remarks);
