using System.Collections.Immutable;

namespace PlotAgronomy.Weather;

/// <summary>The temperature of the seed zone as an estimate: the mean of the air over a few days. A thermometer in the soil is
/// better.</summary>
internal static class SoilTemperature
{
    private static int DaysOfMean => (int)WeatherConstants.All["soil-temperature-days"];

    /// <summary>In C, of one of several days that follow each other, each with its high and low.</summary>
    internal static double Estimate(ImmutableArray<WeatherDay> days, int at)
    {
        int from = Math.Max(0, at - DaysOfMean + 1);
        double sum = 0;
        for (int i = from; i <= at; i++)
        {
            sum += days[i].MeanCelsius!.Value;
        }

        return SeedbedMath.MeanOf(sum, at - from + 1);
    }
}
