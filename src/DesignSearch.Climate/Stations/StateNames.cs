namespace DesignSearch.Climate.Stations;

/// <summary>The states of the United States by the two letters that the table uses.</summary>
internal static class StateNames
{
    private static readonly Dictionary<string, string> Of = new()
    {
        ["AK"] = "Alaska",
        ["AL"] = "Alabama",
        ["AR"] = "Arkansas",
        ["AZ"] = "Arizona",
        ["CA"] = "California",
        ["CO"] = "Colorado",
        ["CT"] = "Connecticut",
        ["DE"] = "Delaware",
        ["FL"] = "Florida",
        ["GA"] = "Georgia",
        ["HI"] = "Hawaii",
        ["IA"] = "Iowa",
        ["ID"] = "Idaho",
        ["IL"] = "Illinois",
        ["IN"] = "Indiana",
        ["KS"] = "Kansas",
        ["KY"] = "Kentucky",
        ["LA"] = "Louisiana",
        ["MA"] = "Massachusetts",
        ["MD"] = "Maryland",
        ["ME"] = "Maine",
        ["MI"] = "Michigan",
        ["MN"] = "Minnesota",
        ["MO"] = "Missouri",
        ["MS"] = "Mississippi",
        ["MT"] = "Montana",
        ["NC"] = "North Carolina",
        ["ND"] = "North Dakota",
        ["NE"] = "Nebraska",
        ["NH"] = "New Hampshire",
        ["NJ"] = "New Jersey",
        ["NM"] = "New Mexico",
        ["NV"] = "Nevada",
        ["NY"] = "New York",
        ["OH"] = "Ohio",
        ["OK"] = "Oklahoma",
        ["OR"] = "Oregon",
        ["PA"] = "Pennsylvania",
        ["RI"] = "Rhode Island",
        ["SC"] = "South Carolina",
        ["SD"] = "South Dakota",
        ["TN"] = "Tennessee",
        ["TX"] = "Texas",
        ["UT"] = "Utah",
        ["VA"] = "Virginia",
        ["VT"] = "Vermont",
        ["WA"] = "Washington",
        ["WI"] = "Wisconsin",
        ["WV"] = "West Virginia",
        ["WY"] = "Wyoming",
    };

    /// <summary>The whole name; the letters themselves where they are none of a state.</summary>
    /// <param name="letters">Two letters.</param>
    public static string Whole(string letters) => Of.GetValueOrDefault(letters, letters);
}
