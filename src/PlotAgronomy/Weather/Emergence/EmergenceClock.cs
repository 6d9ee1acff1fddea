namespace PlotAgronomy.Weather;

/// <summary>Counts moist days to a thermal time, or to a number of days above a least temperature.</summary>
internal static class EmergenceClock
{
    /// <summary>The date on which the thermal time is reached; null where the days do not suffice. A dry day adds nothing and
    /// takes
    /// nothing away.</summary>
    internal static DateOnly? Reached(IEnumerable<EmergenceDay> days, Func<double, double> ofDay, double needed)
    {
        double sum = 0;
        foreach (var day in days.Where(d => d.IsMoist))
        {
            sum += ofDay(day.SoilCelsius);
            if (sum >= needed)
            {
                return day.Date;
            }
        }

        return null;
    }

    internal static double Sum(IEnumerable<EmergenceDay> days, Func<double, double> ofDay) =>
        days.Where(d => d.IsMoist).Sum(d => ofDay(d.SoilCelsius));
}
