using System.Diagnostics.CodeAnalysis;
using PlotAgronomy.Planning;
using PlotAgronomy.Reference;
using PlotAgronomy.Weather;

namespace PlotAgronomy.Sample.Commands;

/// <summary>The weather that a command is told: files, or lines that are typed.</summary>
/// <param name="Forecast">File of the forecast; null to ask.</param>
/// <param name="Observed">File of observed days, or null.</param>
/// <param name="Zone">Name of the time zone; null takes the clock by the sun of the plot.</param>
/// <param name="From">First day that is typed; null takes the planting date.</param>
internal sealed record WeatherInput(string? Forecast, string? Observed, string? Zone, string? From)
{
    /// <summary>Reads it all, or says in one line what is wrong.</summary>
    internal bool TryRead(PlotPlan plan, ConsoleStreams streams, Action<string> say, [NotNullWhen(true)] out ToldWeather? weather)
    {
        weather = null;
        if (!TryZone(plan, say, out var zone))
        {
            return false;
        }

        WeatherForecast? forecast;
        if (Forecast is null)
        {
            if (!TryFrom(plan, say, out var first))
            {
                return false;
            }

            if (!new PlaceInterview(streams.In, streams.Out).TryPlace(ref plan, say))
            {
                return false;
            }

            zone = Zone is null ? plan.ZoneOf() : zone;
            forecast = new ForecastInterview(streams.In, streams.Out).Ask(first, zone, say);
        }
        else
        {
            forecast = Read(Forecast, say, stream => WeatherForecast.Read(stream, Path.GetFileName(Forecast), zone));
        }

        if (forecast is null)
        {
            return false;
        }

        var days = Zone is null ? plan.ZoneOf(forecast) : zone;
        WeatherHistory? observed = null;
        if (Observed is not null)
        {
            observed = Read(Observed, say, stream => WeatherHistory.Read(stream, Path.GetFileName(Observed), days));
            if (observed is null)
            {
                return false;
            }
        }

        weather = new(plan, forecast, days, observed);
        return true;
    }

    private bool TryZone(PlotPlan plan, Action<string> say, out TimeZoneInfo zone)
    {
        zone = plan.ZoneOf();
        if (Zone is null)
        {
            return true;
        }

        if (TimeZoneInfo.TryFindSystemTimeZoneById(Zone, out var named))
        {
            zone = named;
            return true;
        }

        say($"--zone: this computer knows no time zone '{Zone}', such as America/New_York");
        return false;
    }

    private bool TryFrom(PlotPlan plan, Action<string> say, out DateOnly first)
    {
        first = plan.PlantingDate ?? default;
        if (From is null && plan.PlantingDate is null)
        {
            say("the plan names no planting date: say --from such as 2026-09-12");
            return false;
        }

        return From is null || DateOption.TryRead(From, "--from", say, out first);
    }

    private static T? Read<T>(string file, Action<string> say, Func<Stream, T> read)
        where T : class
    {
        try
        {
            using var stream = new FileStream(file, FileMode.Open, FileAccess.Read);
            return read(stream);
        }
        catch (DataFormatException problem)
        {
            say(problem.Message);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            say($"cannot read '{file}': {error.Message}");
        }

        return null;
    }
}
