using Microsoft.EntityFrameworkCore;

namespace Passagework.Studio.Data;

/// <summary>What the studio keeps; the provider is chosen by the context below it.</summary>
public abstract class StudioDb(DbContextOptions options) : DbContext(options)
{
    /// <summary>Exercises of the teacher's own.</summary>
    public DbSet<ExerciseRow> Exercises => Set<ExerciseRow>();

    /// <summary>Their changes.</summary>
    public DbSet<StepRow> Steps => Set<StepRow>();

    /// <summary>Music to prepare.</summary>
    public DbSet<PieceRow> Pieces => Set<PieceRow>();

    /// <summary>Choices that were kept.</summary>
    public DbSet<DecisionRow> Decisions => Set<DecisionRow>();

    /// <summary>Marks for own criteria.</summary>
    public DbSet<MarkRow> Marks => Set<MarkRow>();

    /// <summary>Settings by name.</summary>
    public DbSet<SettingRow> Settings => Set<SettingRow>();

    /// <inheritdoc/>
    public override Task<int> SaveChangesAsync(
        bool acceptAllChangesOnSuccess,
        CancellationToken cancellationToken = default
    )
    {
        RaiseVersions();
        return base.SaveChangesAsync(acceptAllChangesOnSuccess, cancellationToken);
    }

    /// <inheritdoc/>
    public override int SaveChanges(bool acceptAllChangesOnSuccess)
    {
        RaiseVersions();
        return base.SaveChanges(acceptAllChangesOnSuccess);
    }

    /// <inheritdoc/>
    protected override void OnModelCreating(ModelBuilder modelBuilder)
    {
        modelBuilder.Entity<ExerciseRow>().HasIndex(row => new { row.OnShelf, row.Changed });
        modelBuilder.Entity<StepRow>().HasKey(row => new { row.ExerciseId, row.Number });
        modelBuilder
            .Entity<StepRow>()
            .HasOne<ExerciseRow>()
            .WithMany()
            .HasForeignKey(row => row.ExerciseId)
            .OnDelete(DeleteBehavior.Cascade);
        modelBuilder.Entity<DecisionRow>().HasIndex(row => row.Kept);
        modelBuilder.Entity<MarkRow>().HasKey(row => new { row.Exercise, row.Criterion });
        modelBuilder.Entity<SettingRow>().HasKey(row => row.Name);
        foreach (var type in modelBuilder.Model.GetEntityTypes().Select(entity => entity.ClrType))
        {
            var entity = modelBuilder.Entity(type);
            if (type.IsAssignableTo(typeof(IVersioned)))
                entity.Property(nameof(IVersioned.Version)).IsConcurrencyToken();
        }
    }

    private void RaiseVersions()
    {
        foreach (var entry in ChangeTracker.Entries<IVersioned>())
        {
            if (entry.State == EntityState.Modified)
                entry.Entity.Version++;
        }
    }
}
