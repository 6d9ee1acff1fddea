using PlotAgronomy.Soil;

namespace PlotAgronomy.Planning;

/// <summary>What a system that does not take the report's test says of it once the reading was converted by a published
/// equation.</summary>
/// <remarks>Only to be held against others: no plan rests on it.</remarks>
[JsonConverter(typeof(NotForJson))]
public sealed class ConvertedReply
{
    internal ConvertedReply(NutrientReply reply, ReadingConversion conversion, ExtractantConversion by)
    {
        Reply = reply;
        Conversion = conversion;
        By = by;
    }

    /// <summary>Gets the answer.</summary>
    public NutrientReply Reply { get; }

    /// <summary>Gets the reading, as printed and converted, with the working.</summary>
    public ReadingConversion Conversion { get; }

    /// <summary>Gets the equation that the reading was converted by.</summary>
    public ExtractantConversion By { get; }

    /// <summary>Gets the system.</summary>
    public RecommendationSystem System => Reply.Answer.System;

    /// <summary>The system and what it says.</summary>
    /// <returns>The text.</returns>
    public override string ToString() => $"{System.Name}, by {By.Title}: {Reply.Answer}";
}
