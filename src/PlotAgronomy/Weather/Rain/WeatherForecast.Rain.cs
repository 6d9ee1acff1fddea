using PlotAgronomy.Reference;

namespace PlotAgronomy.Weather;

/// <content>The rain of a window.</content>
public sealed partial class WeatherForecast
{
    /// <summary>The rain of a window.</summary>
    /// <param name="from">Start.</param>
    /// <param name="to">End, after the start.</param>
    /// <returns>The outlook. It is open, with what is known as its part, where the forecast does not tell an amount for the whole
    /// window, or tells one without a chance.</returns>
    /// <exception cref="ArgumentException">The window ends before it starts.</exception>
    public Answer<RainOutlook> Rain(DateTimeOffset from, DateTimeOffset to)
    {
        if (to <= from)
        {
            throw new ArgumentException("A window must end after it starts.", nameof(to));
        }

        var outlook = new RainOutlook(this, new(from, to));
        bool isTold = outlook.Window.Hours - outlook.HoursOfAmount < 1e-6;
        bool hasChances = !Blocks.Any(b => b.Chance is null && b.Millimeters > 0 && b.Slot.HoursShared(outlook.Window) > 0);
        return isTold && hasChances
            ? Answers.Given(outlook, () => outlook.Findings)
            : Answers.OpenButFor(
                outlook,
                () => [WeatherQuestions.Rain(DateText.Of(from), DateText.Of(to))],
                findings: () => outlook.Findings
            );
    }
}
