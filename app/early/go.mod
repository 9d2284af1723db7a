module early.yokebook

go 1.26.0
