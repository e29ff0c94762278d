using Microsoft.Data.Sqlite;
using Passagework.Studio.Data;

namespace Passagework.Studio.Tests.Data;

public sealed class DiskFaultTests
{
    [Theory]
    [InlineData(13, "it is not kept: the disk is full", "free some space, then try again")]
    [InlineData(
        778,
        "it is not kept: the disk takes no more, or cannot be read",
        "free some space, or have the disk looked after, then try again"
    )]
    [InlineData(8, "it is not kept: the file is read-only", "allow writing to it")]
    [InlineData(5, "it is not kept: another program holds the database", "close it, then try again")]
    [InlineData(1, "it is not kept: odd", "a folder on a disk that can be written to")]
    public void What_the_database_refuses_is_said_with_the_way_out(int code, string what, string right)
    {
        var fault = DiskFault.Of(new SqliteException("odd.", code), "it is not kept", "here");

        Assert.Equal((what, "here", right), (fault.What, fault.Where, fault.Right));
    }
}
