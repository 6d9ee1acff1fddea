using System.Globalization;
using System.Text.Json;
using PlotAgronomy.DrawnPlans;

namespace PlotAgronomy.Record.Plans;

/// <summary>A drawn plan that the reader accepts, and how many draws were refused before it.</summary>
internal sealed record DrawnPlan(PlotPlan Plan, string Json, int Refused)
{
    private const int MostAttempts = 60;

    private static readonly JsonSerializerOptions Indented = new() { WriteIndented = true, NewLine = "\n" };

    /// <summary>A draw the reader refuses is drawn again.</summary>
    internal static DrawnPlan Accepted(int number)
    {
        for (int attempt = 0; attempt < MostAttempts; attempt++)
        {
            string json = PlanDraw.Of(number, attempt).ToJsonString(Indented);
            if (PlanFile.Read(json).Plan is { } plan)
            {
                return new(plan, json, attempt);
            }
        }

        throw new InvalidDataException(
            string.Create(CultureInfo.InvariantCulture, $"Plan {number} was refused {MostAttempts} times."));
    }
}
