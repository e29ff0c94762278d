using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Passagework.Studio.Data;

/// <summary>One SQLite file in the user's data folder.</summary>
public sealed class LiteDb(DbContextOptions<LiteDb> options) : StudioDb(options)
{
    /// <inheritdoc/>
    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        // SQLite has no type for instants; as numbers they can be put in order.
        configurationBuilder.Properties<DateTimeOffset>().HaveConversion<DateTimeOffsetToBinaryConverter>();
}
