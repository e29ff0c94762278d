using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class TimingSenseTests
{
    // Friberg and Sundberg 1995.
    [Theory]
    [InlineData(6, 100)]
    [InlineData(6, 239.9)]
    [InlineData(6, 240)]
    [InlineData(25, 1000)]
    public void NoticeableMs_is_6_ms_or_a_fortieth(double shift, double interval) =>
        Assert.Equal(shift, TimingSense.NoticeableMs(interval), 1e-12);

    // Interval and noticeable shift, ms, at 1 to 6 notes a beat. The table rounds: the interval to whole ms, the shift
    // to tenths; half of the last place is the tolerance.
    [Theory]
    [InlineData(60, "1000/25.0 500/12.5 333/8.3 250/6.2 200/6 167/6")]
    [InlineData(80, "750/18.8 375/9.4 250/6.2 188/6 150/6 125/6")]
    [InlineData(100, "600/15.0 300/7.5 200/6 150/6 120/6 100/6")]
    [InlineData(120, "500/12.5 250/6.2 167/6 125/6 100/6 83/6")]
    [InlineData(160, "375/9.4 188/6 125/6 94/6 75/6 63/6")]
    [InlineData(200, "300/7.5 150/6 100/6 75/6 60/6 50/6")]
    public void NoticeableMs_at_a_tempo_is_that_of_the_table(double bpm, string row)
    {
        var tempo = Beats.Tempo(bpm);
        var cells = row.Split(' ');

        for (var notes = 1; notes <= 6; notes++)
        {
            var cell = cells[notes - 1]
                .Split('/')
                .Select(text => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture))
                .ToArray();

            Assert.Equal(cell[0], tempo.PulseMs(notes), 0.5001);
            Assert.Equal(cell[1], TimingSense.NoticeableMs(tempo.PulseMs(notes)), 0.0501);
        }
    }
}
