using Microsoft.Data.Sqlite;
using Passagework.Studio.Data;
using Passagework.Studio.Hosting;

namespace Passagework.Studio.Tests.Hosting;

public sealed class StartTests
{
    [Fact]
    public async Task A_new_folder_gets_a_database_that_survives_a_kill()
    {
        using var first = await StudioProcess.Start();
        first.Kill();
        using var second = await StudioProcess.Start(first.DataFolder);
        using var web = new HttpClient();

        Assert.Equal(
            System.Net.HttpStatusCode.OK,
            (
                await web.GetAsync(new Uri(second.Url + "/alive"), TestContext.Current.CancellationToken)
            ).StatusCode
        );
        Assert.Equal("wal", Text(Path.Combine(first.DataFolder, "studio.db"), "pragma journal_mode"));
    }

    [Fact]
    public async Task A_damaged_database_is_left_as_it_is_and_the_way_out_is_said()
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;
        var file = Path.Combine(folder, "studio.db");
        await File.WriteAllTextAsync(
            file,
            "no database at all, but long enough to look like one",
            TestContext.Current.CancellationToken
        );

        var (code, errors) = await StudioProcess.Run(
            "--data",
            folder,
            "--no-browser",
            "--urls",
            "http://127.0.0.1:0"
        );

        Assert.Equal(1, code);
        Assert.Contains("no database, or damaged", errors, StringComparison.Ordinal);
        Assert.Contains("backups", errors, StringComparison.Ordinal);
        Assert.StartsWith(
            "no database at all",
            await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task A_database_of_a_newer_version_is_not_opened()
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;
        Assert.Null(await Database.Open(new StudioOptions(folder, null, false), TimeProvider.System));
        var file = Path.Combine(folder, "studio.db");
        Text(
            file,
            "insert into __EFMigrationsHistory values ('99990101000000_Later', '99.0.0') returning MigrationId"
        );

        var (code, errors) = await StudioProcess.Run(
            "--data",
            folder,
            "--no-browser",
            "--urls",
            "http://127.0.0.1:0"
        );

        Assert.Equal(1, code);
        Assert.Contains("newer version", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_database_of_another_program_is_not_touched()
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;
        var file = Path.Combine(folder, "studio.db");
        Text(file, "create table theirs (x); select 1");

        var (code, errors) = await StudioProcess.Run(
            "--data",
            folder,
            "--no-browser",
            "--urls",
            "http://127.0.0.1:0"
        );

        Assert.Equal(1, code);
        Assert.Contains("another program", errors, StringComparison.Ordinal);
        Assert.Equal("1", Text(file, "select count(*) from sqlite_master"));
    }

    [Theory]
    [InlineData("--urls", "nonsense")]
    [InlineData("--urls", "http://127.0.0.1:99999")]
    public async Task An_address_that_cannot_be_listened_on_is_named(string option, string value)
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;

        var (code, errors) = await StudioProcess.Run("--data", folder, "--no-browser", option, value);

        Assert.Equal(1, code);
        Assert.Contains(value, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_folder_that_cannot_be_made_is_named()
    {
        var file = Path.GetTempFileName();

        var (code, errors) = await StudioProcess.Run("--data", Path.Combine(file, "below"), "--no-browser");

        Assert.Equal(1, code);
        Assert.Contains(file, errors, StringComparison.Ordinal);
        Assert.Contains("--data", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_usual_port_in_use_is_no_obstacle()
    {
        using var first = await StudioProcess.Start(urls: "http://127.0.0.1:0");
        var (code, errors) = await StudioProcess.Run(
            "--data",
            first.DataFolder,
            "--no-browser",
            "--urls",
            first.Url
        );

        Assert.Equal(1, code);
        Assert.StartsWith(
            $"--urls: the studio cannot listen on {first.Url}",
            errors,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_started_at_once_on_a_new_folder_put_the_demo_in_once()
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;
        var both = await Task.WhenAll(StudioProcess.Start(folder), StudioProcess.Start(folder));
        using var first = both[0];
        using var second = both[1];
        using var alone = await StudioProcess.Start();

        const string count = "select count(*) from Exercises";
        Assert.Equal(
            Text(Path.Combine(alone.DataFolder, "studio.db"), count),
            Text(Path.Combine(folder, "studio.db"), count)
        );
        Assert.Equal(("", ""), (first.Errors, second.Errors));
    }

    [Fact]
    public async Task A_full_disk_is_said_with_the_folder_and_what_to_do()
    {
        var folder = Directory.CreateTempSubdirectory("studio-").FullName;

        var (code, errors) = await StudioProcess.RunOnFullDisk("--data", folder, "--no-browser");

        Assert.Equal(1, code);
        Assert.StartsWith($"{folder}: the data cannot be opened: the disk", errors, StringComparison.Ordinal);
        Assert.Contains("free some space", errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_system_without_openssl_is_told_so()
    {
        Assert.Null(SystemLibraries.Missing());
        Assert.Null(SystemLibraries.Missing(["libnobody.so", "libc.so.6"]));
        Assert.Contains(
            "apt install openssl",
            SystemLibraries.Missing(["libnobody.so"])?.Right,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public async Task An_option_that_is_not_known_is_bad_usage()
    {
        var (code, errors) = await StudioProcess.Run("--colour", "green");

        Assert.Equal(2, code);
        Assert.Contains("--colour", errors, StringComparison.Ordinal);
    }

    private static string Text(string file, string query)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = query;
        return Convert.ToString(command.ExecuteScalar(), System.Globalization.CultureInfo.InvariantCulture)
            ?? "";
    }
}
