using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PlotAgronomy.Columns;
using PlotAgronomy.Liming;

namespace PlotAgronomy.Tests.Columns;

/// <summary>Laws of every lime column, for rows drawn anyhow.</summary>
public class LimeColumnProperties
{
    private static readonly LimeMethod[] Methods = [.. LimeMethod.All.Concat(LimeMethod.Unchecked)];

    [Property]
    public bool A_rate_is_the_call_s_to_the_last_bit(PositiveInt which, int water, int read, PositiveInt target)
    {
        var (column, waterPh, reading) = Drawn(which.Get, water, read, target.Get);
        var (rates, status, flags) = LimeRow.Answers(column, [waterPh], [reading]);
        var need = LimeRow.Call(column, null, SoilTexture.Loam, waterPh, reading);
        return LimeRow.Difference(column, need, rates[0], status[0], flags[0]) is null;
    }

    [Property]
    public bool A_row_does_not_depend_on_its_neighbours(PositiveInt which, int water, int read, PositiveInt target, NonNegativeInt before)
    {
        var (column, waterPh, reading) = Drawn(which.Get, water, read, target.Get);
        int place = before.Get % 9;
        double[] waterPhs = [.. Enumerable.Range(0, 9).Select(i => i == place ? waterPh : 3.9 + i)];
        double[] readings = [.. Enumerable.Range(0, 9).Select(i => i == place ? reading : 8 - i)];
        var alone = LimeRow.Answers(column, [waterPh], [reading]);
        var among = LimeRow.Answers(column, waterPhs, readings);
        return alone.Rates[0].Equals(among.Rates[place]) && alone.Status[0] == among.Status[place] && alone.Flags[0] == among.Flags[place];
    }

    private static (LimeColumn Column, double WaterPh, double Reading) Drawn(int which, int water, int read, int target)
    {
        var method = Methods[which % Methods.Length];
        double to = method.TargetPhs.IsEmpty ? 5.5 + (target % 10 / 10.0) : method.TargetPhs[target % method.TargetPhs.Length];
        double span = method.HighestReading - method.LowestReading;
        return (LimeColumn.ForMethod(method, to, texture: SoilTexture.Loam), 5.5 + (water % 40 / 10.0), method.LowestReading + (span * (read % 60) / 50));
    }
}
