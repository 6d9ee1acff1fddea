namespace PlotAgronomy.Weather;

/// <summary>What a column of a table of weather holds.</summary>
internal enum TableQuantity
{
    Rain,
    High,
    Low,
    Temperature,
    DewPoint,
    HighestHumidity,
    LowestHumidity,
    Humidity,
    Wind,
    Sunshine,
    Solar,
}
