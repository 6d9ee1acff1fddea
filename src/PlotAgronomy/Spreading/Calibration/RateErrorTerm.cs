namespace PlotAgronomy.Spreading;

/// <summary>One measurement's share in the error of a rate.</summary>
/// <param name="Measurement">What was measured, such as <c>weight</c>.</param>
/// <param name="Percent">Its error in percent of the measured value; at least 0.</param>
[JsonConverter(typeof(NotForJson))]
public sealed record RateErrorTerm(string Measurement, double Percent);
