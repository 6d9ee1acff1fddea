namespace PlotAgronomy.Weather;

/// <summary>What an emergence clock found on its way.</summary>
internal sealed record EmergenceCourse(
    CropKind Kind,
    ThermalTime? ThermalTime,
    double? LeastCelsius,
    int ColdDays,
    int DryDaysBeforeSprouting,
    int DryDaysAfterSprouting,
    int DaysExposed
);
