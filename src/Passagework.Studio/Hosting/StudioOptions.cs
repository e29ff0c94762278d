namespace Passagework.Studio.Hosting;

/// <summary>How the studio is started.</summary>
/// <param name="DataFolder">Folder of the database and its backups; made when it is missing.</param>
/// <param name="Urls">Addresses to listen on; null takes the usual one, or a free port where that is taken.</param>
/// <param name="OpensBrowser">Whether the browser is opened when the first page can be had.</param>
internal sealed record StudioOptions(string DataFolder, string? Urls, bool OpensBrowser)
{
    /// <summary>The folder used when none is named: <c>Passagework</c> in the user's folder for programs' data.</summary>
    public static string UsualDataFolder =>
        Path.Combine(
            Environment.GetFolderPath(
                Environment.SpecialFolder.LocalApplicationData,
                Environment.SpecialFolderOption.DoNotVerify
            ),
            "Passagework"
        );

    /// <summary>The database file.</summary>
    public string DatabaseFile => Path.Combine(DataFolder, "studio.db");

    /// <summary>Where copies of the database are kept.</summary>
    public string BackupFolder => Path.Combine(DataFolder, "backups");
}
