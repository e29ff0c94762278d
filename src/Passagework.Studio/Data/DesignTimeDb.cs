using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Passagework.Studio.Data;

/// <summary>Lets <c>dotnet ef migrations add</c> see the model without starting the studio.</summary>
internal sealed class DesignTimeDb : IDesignTimeDbContextFactory<LiteDb>
{
    /// <inheritdoc/>
    public LiteDb CreateDbContext(string[] args)
    {
        var builder = new DbContextOptionsBuilder<LiteDb>();
        Database.Configure(builder, "design.db");
        return new LiteDb(builder.Options);
    }
}
